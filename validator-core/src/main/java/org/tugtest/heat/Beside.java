package org.tugtest.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** What flows beside wires in the lasting states of a harness. */
public final class Beside {
  private final LoomSections sections;
  private final List<State> states;
  private final Set<String> unknown;
  private final FreeAirAmps freeAir = new FreeAirAmps();
  private final Map<Integer, List<Loaded>> known = new ConcurrentHashMap<>();

  /** How warm the looms are in a lasting state. */
  public record State(String name, LoomWarmth warmth) {}

  /**
   * What flows beside wires.
   *
   * @param states that last and have currents that do; where there are none, nothing is known
   * @param unknown wires whose current is not known in some of them
   */
  public Beside(LoomSections sections, List<State> states, Set<String> unknown) {
    this.sections = sections;
    this.states = List.copyOf(states);
    this.unknown = Set.copyOf(unknown);
  }

  /** A section and what flows in it. */
  static final class Currents {
    private final Section section;
    private final double[] amps;

    Currents(Section section, double[] amps) {
      this.section = section;
      this.amps = amps;
    }

    Section section() {
      return section;
    }

    /** The bundle with another current in these places. */
    ShrunkBundle with(List<Integer> places, double other, Envelope around, FreeAirAmps freeAir) {
      double[] changed = amps.clone();
      places.forEach(place -> changed[place] = other);
      return section.with(changed, around, freeAir);
    }
  }

  /** A section with the currents of a state, the first of those with the same ones. */
  static final class Loaded {
    private final Currents currents;
    private final String state;
    private final ShrunkBundle bundle;
    private final ShrunkBundle bare;

    Loaded(Section section, double[] amps, String state, FreeAirAmps freeAir) {
      this.currents = new Currents(section, amps);
      this.state = state;
      this.bundle = section.with(amps, section.envelope(), freeAir);
      this.bare = section.enclosed() ? section.with(amps, Envelope.BARE, freeAir) : bundle;
    }

    Section section() {
      return currents.section;
    }

    /** The same without the bundles that are made of it, to be kept. */
    Currents currents() {
      return currents;
    }

    String state() {
      return state;
    }

    ShrunkBundle bundle() {
      return bundle;
    }

    /** As if no covering were round it. */
    ShrunkBundle bare() {
      return bare;
    }

    /** The same with another current in these places. */
    ShrunkBundle with(List<Integer> places, double other, Envelope around, FreeAirAmps freeAir) {
      return currents.with(places, other, around, freeAir);
    }

    /** The same with another form of a wire. */
    Loaded with(String wire, WireForm form, FreeAirAmps freeAir) {
      return new Loaded(section().with(wire, form), currents.amps, state, freeAir);
    }
  }

  /**
   * A section with its different currents; none where no state lasts. That of one wire alone is
   * asked for by that wire only, and not kept.
   */
  List<Loaded> loaded(int section) {
    return sections.all().get(section).conductors().size() == 1
        ? load(section)
        : known.computeIfAbsent(section, this::load);
  }

  private List<Loaded> load(int section) {
    List<double[]> different = new ArrayList<>();
    List<Loaded> all = new ArrayList<>();
    for (State state : states) {
      double[] amps = state.warmth().amps(section);
      if (different.stream().noneMatch(other -> Arrays.equals(other, amps))) {
        different.add(amps);
        all.add(new Loaded(sections.all().get(section), amps, state.name(), freeAir));
      }
    }
    return List.copyOf(all);
  }

  /** Whether the current of every wire of a section is known, and its size. */
  boolean knows(int section) {
    Section its = sections.all().get(section);
    return !states.isEmpty()
        && its.unsized().isEmpty()
        && (unknown.isEmpty()
            || its.conductors().stream().noneMatch(one -> unknown.contains(one.wire())));
  }

  LoomSections sections() {
    return sections;
  }

  FreeAirAmps freeAir() {
    return freeAir;
  }
}
