package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/**
 * Places near each other in one file, with the lines around them.
 *
 * @param shown {@code path:line:column} of each
 * @param snippet null when the file could not be decoded, or to keep a page small
 */
record CodeView(List<String> shown, @Nullable Snippet snippet) {
  private static final int MOST_LINES = 14;

  CodeView {
    shown = List.copyOf(shown);
  }

  /**
   * Puts together the places whose lines touch, in the order in which they come.
   *
   * @param texts the text of a file, null when there is none to show
   * @param path what is printed for a place
   */
  static List<CodeView> of(
      List<Place> places,
      Function<Place, @Nullable SourceText> texts,
      Function<Place, String> path) {
    List<Near> groups = new ArrayList<>();
    for (Place place : places) {
      groups.stream()
          .filter(group -> group.takes(place))
          .findFirst()
          .ifPresentOrElse(group -> group.add(place), () -> groups.add(new Near(place)));
    }
    return groups.stream().map(group -> group.view(texts, path)).toList();
  }

  private static final class Near {
    private final List<Place> places = new ArrayList<>();
    private Snippet.Window window;

    Near(Place first) {
      places.add(first);
      window = Snippet.window(first);
    }

    boolean takes(Place place) {
      Snippet.Window own = Snippet.window(place);
      Snippet.Window both = window.with(own);
      return place.file().equals(places.get(0).file())
          && window.touches(own)
          && both.last() - both.first() < MOST_LINES;
    }

    void add(Place place) {
      places.add(place);
      window = window.with(Snippet.window(place));
    }

    CodeView view(Function<Place, @Nullable SourceText> texts, Function<Place, String> path) {
      SourceText text = texts.apply(places.get(0));
      return new CodeView(
          places.stream().map(path).toList(),
          text == null ? null : Snippet.of(text, window, places));
    }
  }
}
