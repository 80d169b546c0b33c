package motebook.journal;

import java.sql.SQLException;
import motebook.model.Text;
import org.sqlite.Function;

/** The SQL function {@code folded(text)}: a text as names are compared. */
final class FoldedText extends Function {
  static final String NAME = "folded";

  @Override
  protected void xFunc() throws SQLException {
    result(Text.folded(value_text(0)));
  }
}
