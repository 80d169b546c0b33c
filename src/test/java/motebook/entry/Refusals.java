package motebook.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import motebook.model.Refusal;
import org.assertj.core.api.AbstractStringAssert;

/** A refused line: what was said about it and where it points. */
record Refusals(String line, Refusal refusal) {

  static Refusals of(String line, Scene scene) {
    Refusal refusal = catchThrowableOfType(Refusal.class, () -> SpokenLine.read(line, scene));
    assertThat(refusal).as("refusal of \"%s\"", line).isNotNull();
    return new Refusals(line, refusal);
  }

  static Refusals of(String line) {
    return of(line, Scenes.usual());
  }

  AbstractStringAssert<?> message() {
    return assertThat(refusal.getMessage());
  }

  Refusals at(String words) {
    assertThat(refusal.from()).as("from in \"%s\": %s", line, refusal.getMessage()).isNotNegative();
    assertThat(line.substring(refusal.from(), refusal.to())).isEqualTo(words);
    return this;
  }

  Refusals nowhere() {
    assertThat(refusal.from()).isEqualTo(-1);
    assertThat(refusal.to()).isEqualTo(-1);
    return this;
  }
}
