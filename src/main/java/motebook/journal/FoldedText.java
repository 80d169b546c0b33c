package motebook.journal;

import java.sql.Connection;
import java.sql.SQLException;
import motebook.model.Text;
import org.sqlite.Function;

/** The SQL function {@code folded(text)}: a text as names are compared. */
final class FoldedText extends Function {
  /** Lets the statements of a connection call it. */
  static void makeKnown(Connection connection) throws SQLException {
    Function.create(connection, "folded", new FoldedText(), 1, Function.FLAG_DETERMINISTIC);
  }

  @Override
  protected void xFunc() throws SQLException {
    result(Text.folded(value_text(0)));
  }
}
