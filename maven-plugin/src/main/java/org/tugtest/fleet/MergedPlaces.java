package org.tugtest.fleet;

import org.tugtest.text.Place;
import org.tugtest.text.Places;

/** Where things of a merge are written: in the one of its parents that says more of them. */
record MergedPlaces(Places ours, Places theirs) implements Places {
  @Override
  public Place of(String thing, String... names) {
    Place mine = ours.of(thing, names);
    Place other = theirs.of(thing, names);
    return depth(other) > depth(mine) ? other : mine;
  }

  private static long depth(Place place) {
    return place.pointer().chars().filter(c -> c == '/').count();
  }
}
