package motebook.command;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that moves a bar on by each byte that is read from it. */
final class Metered extends FilterInputStream {
  private final Progress progress;

  Metered(InputStream in, Progress progress) {
    super(in);
    this.progress = progress;
  }

  @Override
  public int read() throws IOException {
    int one = super.read();
    progress.step(one < 0 ? 0 : 1);
    return one;
  }

  @Override
  public int read(byte[] bytes, int from, int count) throws IOException {
    int read = super.read(bytes, from, count);
    progress.step(Math.max(0, read));
    return read;
  }
}
