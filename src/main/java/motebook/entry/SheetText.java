package motebook.entry;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import motebook.model.Refusal;

/**
 * The text of a file that some spreadsheet wrote.
 *
 * @param text without a byte order mark
 * @param remark what had to be guessed about its letters, if anything had
 */
public record SheetText(String text, Optional<String> remark) {
  private static final char MARK = '\uFEFF';
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  /**
   * Reads bytes as UTF-8; as UTF-16 where they begin with its mark; else as windows-1252, which is
   * then remarked on.
   *
   * @throws Refusal if they are no text
   */
  public static SheetText of(byte[] bytes) {
    SheetText sheet = decoded(bytes);
    if (sheet.text.indexOf('\0') >= 0) {
      throw new Refusal(
          "The file is no text but something else, such as a workbook. Save the sheet as CSV"
              + " (UTF-8) and import that.");
    }
    return sheet;
  }

  private static SheetText decoded(byte[] bytes) {
    if (bytes.length > 1 && (bytes[0] & bytes[1] & 0xfe) == 0xfe) {
      return new SheetText(marked(new String(bytes, StandardCharsets.UTF_16)), Optional.empty());
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new SheetText(marked(text), Optional.empty());
    } catch (CharacterCodingException notUtf8) {
      return new SheetText(
          new String(bytes, WINDOWS),
          Optional.of(
              "The file is not UTF-8 and was read as windows-1252. If letters look wrong, save it"
                  + " as CSV UTF-8."));
    }
  }

  private static String marked(String text) {
    return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
  }
}
