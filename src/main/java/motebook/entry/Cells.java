package motebook.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import motebook.journal.Column;
import motebook.journal.Form;
import motebook.model.Refusal;

/**
 * How a value of the book stands in a cell of a CSV file, and comes out of it again the same.
 *
 * <p>A text that a spreadsheet would take for a formula gets an apostrophe in front (CWE-1236;
 * OWASP ASVS 5.0, 1.2.10, names the characters), and so does one that begins with an apostrophe,
 * which makes it reversible. The items of a list are parted by "; ", the two parts of an item by
 * "="; where a text holds one of them or a backslash, a backslash stands before it.
 */
public final class Cells {
  private static final String DANGEROUS = "=+-@\t\r\n\0'";
  private static final char QUOTE = '\'';
  private static final char ESCAPE = '\\';
  private static final char NEXT_ITEM = ';';
  private static final char NEXT_PART = '=';

  private Cells() {}

  /** The text of a cell; empty for null and for a list of nothing. */
  public static String write(Column column, Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof List<?> items) {
      return neutral(
          items.stream()
              .map(item -> item(column, (List<?>) item))
              .collect(Collectors.joining(NEXT_ITEM + " ")));
    }
    String text = column.form().text(value);
    return isText(column.form()) ? neutral(text) : text;
  }

  private static boolean isText(Form form) {
    return form == Form.TEXT || form == Form.NAME;
  }

  private static String item(Column column, List<?> parts) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Object part = parts.get(i);
      texts.add(part == null ? "" : escaped(column.parts().get(i).form().text(part)));
    }
    return String.join(String.valueOf(NEXT_PART), texts);
  }

  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ESCAPE || c == NEXT_ITEM || c == NEXT_PART) {
        escaped.append(ESCAPE);
      }
      escaped.append(c);
    }
    return escaped.toString();
  }

  /** The text as no spreadsheet takes it for a formula. */
  static String neutral(String text) {
    return !text.isEmpty() && DANGEROUS.indexOf(text.charAt(0)) >= 0 ? QUOTE + text : text;
  }

  /** The text before it was made neutral. */
  static String plain(String cell) {
    return !cell.isEmpty() && cell.charAt(0) == QUOTE ? cell.substring(1) : cell;
  }

  /**
   * The value of a cell; null where it is empty, for a list a list of nothing.
   *
   * @throws Refusal if the text cannot be one of the column, as a sentence without its subject
   */
  public static Object read(Column column, String cell) {
    if (cell.isEmpty() && column.required()) {
      throw new Refusal("must not be empty");
    }
    if (column.list()) {
      return items(column, plain(cell));
    }
    String text = isText(column.form()) ? plain(cell) : cell;
    return text.isEmpty() ? null : column.form().parse(text);
  }

  private static List<List<Object>> items(Column column, String text) {
    List<List<Object>> items = new ArrayList<>();
    if (text.isEmpty()) {
      return items;
    }
    List<Object> item = new ArrayList<>();
    StringBuilder part = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ESCAPE && i + 1 < text.length()) {
        part.append(text.charAt(++i));
      } else if (c == NEXT_PART || c == NEXT_ITEM) {
        add(column, item, part);
        if (c == NEXT_ITEM) {
          items.add(whole(column, item));
          item = new ArrayList<>();
          i += text.startsWith(" ", i + 1) ? 1 : 0;
        }
      } else {
        part.append(c);
      }
    }
    add(column, item, part);
    items.add(whole(column, item));
    return items;
  }

  private static void add(Column column, List<Object> item, StringBuilder part) {
    if (item.size() == column.parts().size()) {
      throw new Refusal(shape(column));
    }
    Form form = column.parts().get(item.size()).form();
    if (part.isEmpty() && item.isEmpty()) {
      throw new Refusal(shape(column));
    }
    item.add(part.isEmpty() ? null : form.parse(part.toString()));
    part.setLength(0);
  }

  private static List<Object> whole(Column column, List<Object> item) {
    if (item.size() < column.parts().size()) {
      throw new Refusal(shape(column));
    }
    return item;
  }

  private static String shape(Column column) {
    String one = column.parts().stream().map(Column.Part::name).collect(Collectors.joining("="));
    return "needs items such as \"" + one + "\", parted by \"; \"";
  }
}
