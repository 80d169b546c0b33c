package motebook.screen.terminal;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.terminal.ansi.UnixTerminal;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The terminal that the program was started in, with what Lanterna leaves to be set. */
class RealTerminal extends UnixTerminal {
  private static final Pattern SIZE = Pattern.compile("(\\d+) (\\d+)");
  private static final byte[] PASTE_BRACKETS_ON = bytes("\u001b[?2004h");
  private static final byte[] PASTE_BRACKETS_OFF = bytes("\u001b[?2004l");
  private static final int ONE_FRAME = 1 << 16;

  // Ctrl-C, Ctrl-Z, Ctrl-\, Ctrl-S, Ctrl-Q and Ctrl-V are keys here, not signals; Enter sends a
  // line feed.
  private static final String[] KEYS_AS_THEY_COME = {
    "-icanon", "min", "1", "-echo", "intr", "undef", "susp", "undef", "quit", "undef", "-ixon",
    "-iexten", "icrnl", "size"
  };

  // Set while the constructor above this one runs; a value given here would undo that.
  private TerminalSize asFound;

  RealTerminal() throws IOException {
    this(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out));
  }

  RealTerminal(InputStream keys, OutputStream frames) throws IOException {
    super(
        keys,
        new BufferedOutputStream(frames, ONE_FRAME),
        StandardCharsets.UTF_8,
        CtrlCBehaviour.TRAP);
    getInputDecoder().addProfile(PasteBracket.PROFILE);
  }

  // Another program has to be started for each call, so one sets all and tells the size, too.
  @Override
  protected void saveTerminalSettings() throws IOException {
    super.saveTerminalSettings();
    asFound = size(runSTTYCommand(KEYS_AS_THEY_COME));
  }

  // Set with all the rest, and restored with it.
  @Override
  protected void canonicalMode(boolean enabled) {}

  // As above.
  @Override
  protected void keyEchoEnabled(boolean enabled) {}

  // As above.
  @Override
  protected void keyStrokeSignalsEnabled(boolean enabled) {}

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public void enterPrivateMode() throws IOException {
    super.enterPrivateMode();
    writeToTerminal(PASTE_BRACKETS_ON);
    flush();
  }

  @Override
  public void exitPrivateMode() throws IOException {
    writeToTerminal(PASTE_BRACKETS_OFF);
    super.exitPrivateMode();
  }

  // Lanterna would write character by character, which tears those beyond 16 bits apart.
  @Override
  public void putString(String string) throws IOException {
    writeToTerminal(bytes(string));
  }

  // Lanterna would ask the terminal itself and wait two seconds for an answer that may not come.
  @Override
  protected TerminalSize findTerminalSize() throws IOException {
    TerminalSize size = asFound == null ? size(runSTTYCommand("size")) : asFound;
    asFound = null;
    return size;
  }

  private static TerminalSize size(String told) {
    Matcher size = SIZE.matcher(told);
    boolean known = size.find() && !"0".equals(size.group(1)) && !"0".equals(size.group(2));
    return known
        ? new TerminalSize(Integer.parseInt(size.group(2)), Integer.parseInt(size.group(1)))
        : new TerminalSize(80, 24);
  }
}
