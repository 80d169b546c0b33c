package motebook.report;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes answers as JSON. Keys carry units and keep their meaning; numbers are not rounded. */
public final class Json {
  private static final JSON WRITER =
      JSON.builder().enable(JSON.Feature.WRITE_NULL_PROPERTIES).build();

  private Json() {}

  /** One line of JSON of maps, lists, strings, numbers, booleans and nulls. */
  public static String write(Object answer) {
    try {
      return WRITER.asString(answer);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * An object with its keys in the order given.
   *
   * @param keysAndValues alternating; a value may be null
   */
  public static Map<String, Object> object(Object... keysAndValues) {
    if (keysAndValues.length % 2 != 0) {
      throw new IllegalArgumentException("a key without a value");
    }
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < keysAndValues.length; i += 2) {
      object.put((String) keysAndValues[i], keysAndValues[i + 1]);
    }
    return object;
  }
}
