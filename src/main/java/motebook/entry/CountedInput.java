package motebook.entry;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;

/** A file that tells how many of its bytes are being read. */
final class CountedInput extends FilterInputStream {
  private final LongConsumer bytes;

  CountedInput(InputStream in, LongConsumer bytes) {
    super(in);
    this.bytes = bytes;
  }

  @Override
  public int read() throws IOException {
    int read = super.read();
    bytes.accept(read < 0 ? 0 : 1);
    return read;
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    int read = super.read(into, from, most);
    bytes.accept(Math.max(0, read));
    return read;
  }
}
