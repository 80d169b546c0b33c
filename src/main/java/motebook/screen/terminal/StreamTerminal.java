package motebook.screen.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/** A terminal that is only two streams: nothing outside the program has to be set or asked. */
final class StreamTerminal extends RealTerminal {
  StreamTerminal(InputStream keys, OutputStream frames) throws IOException {
    super(keys, frames);
  }

  @Override
  protected String runSTTYCommand(String... parameters) {
    return "24 80";
  }
}
