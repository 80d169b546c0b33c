package motebook.screen.state;

import java.util.List;
import java.util.Optional;
import motebook.desk.Timing;
import motebook.model.Favourite;

/**
 * What lies ready at the bench.
 *
 * @param favourites the lines that are said often
 * @param recent the lines that the person said last, newest first; none until they are read
 * @param setAside keys of the cautions that the person has set aside for the day
 * @param timing the person's stopwatch, if one is under way and the day is today
 * @param underWay whether the person has a stopwatch under way, on whatever day
 */
public record Ready(
    List<Favourite> favourites,
    List<String> recent,
    List<String> setAside,
    Optional<Timing> timing,
    boolean underWay) {
  public Ready {
    favourites = List.copyOf(favourites);
    recent = List.copyOf(recent);
    setAside = List.copyOf(setAside);
  }

  Ready recalling(List<String> lines) {
    return new Ready(favourites, lines, setAside, timing, underWay);
  }
}
