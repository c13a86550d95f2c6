package org.tugtest.heat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * How warm looms become under lasting currents, section by section as {@link ShrunkBundle} has it.
 * Currents are taken to a tenth of a milliampere; sections of the same content and currents are
 * reckoned once, or by two threads at a time with the same result.
 */
public final class LoomHeat {
  private static final double PER_AMPERE = 1e4;
  private final LoomSections sections;
  private final FreeAirAmps freeAir;
  private final int[] kind;
  private final List<String> wires;

  /** Of each section the places of its wires among all. */
  private final int[][] wiresOf;

  private final Map<Key, BundleHeat> known = new ConcurrentHashMap<>();

  /** What the temperatures of a section depend on but for its currents. */
  private record Kind(List<WireForm> forms, Envelope envelope, double airC) {}

  /** A kind of section with currents. */
  private static final class Key {
    private final int kind;
    private final double[] amps;

    Key(int kind, double[] amps) {
      this.kind = kind;
      this.amps = amps;
    }

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Key key && key.kind == kind && Arrays.equals(key.amps, amps);
    }

    @Override
    public int hashCode() {
      return 31 * kind + Arrays.hashCode(amps);
    }
  }

  /** The heat of these sections. */
  public LoomHeat(LoomSections sections, FreeAirAmps freeAir) {
    this.sections = sections;
    this.freeAir = freeAir;
    this.kind = new int[sections.all().size()];
    this.wiresOf = new int[kind.length][];
    Map<Kind, Integer> kinds = new HashMap<>();
    Map<String, Integer> places = new LinkedHashMap<>();
    for (int i = 0; i < kind.length; i++) {
      Section section = sections.all().get(i);
      List<WireForm> forms = section.conductors().stream().map(Section.Conductor::form).toList();
      Kind its = new Kind(forms, section.envelope(), section.ambientC().value());
      kind[i] = kinds.computeIfAbsent(its, none -> kinds.size());
      wiresOf[i] = new int[forms.size()];
      for (int k = 0; k < forms.size(); k++) {
        String wire = section.conductors().get(k).wire();
        wiresOf[i][k] = places.computeIfAbsent(wire, none -> places.size());
      }
    }
    this.wires = List.copyOf(places.keySet());
  }

  /** The wires that run by any section. */
  public List<String> wires() {
    return wires;
  }

  /**
   * The temperatures at these currents.
   *
   * @param amps lasting current of a wire, by its place in {@link #wires}; either way
   * @param before an earlier answer, of which sections with the same currents are kept
   */
  public LoomWarmth at(IntToDoubleFunction amps, @Nullable LoomWarmth before) {
    double[] taken = new double[wires.size()];
    for (int i = 0; i < taken.length; i++) {
      taken[i] = taken(amps.applyAsDouble(i));
    }
    double[][] currents = new double[kind.length][];
    BundleHeat[] heats = new BundleHeat[kind.length];
    for (int i = 0; i < kind.length; i++) {
      if (before != null && same(before.amps(i), wiresOf[i], taken)) {
        currents[i] = before.amps(i);
        heats[i] = before.of(i);
      } else {
        currents[i] = new double[wiresOf[i].length];
        for (int k = 0; k < currents[i].length; k++) {
          currents[i][k] = taken[wiresOf[i][k]];
        }
        heats[i] = heat(new Key(kind[i], currents[i]), sections.all().get(i));
      }
    }
    return new LoomWarmth(sections, currents, heats, before);
  }

  private static boolean same(double[] before, int[] wires, double[] taken) {
    for (int k = 0; k < wires.length; k++) {
      if (before[k] != taken[wires[k]]) {
        return false;
      }
    }
    return true;
  }

  private BundleHeat heat(Key key, Section section) {
    BundleHeat found = known.get(key);
    if (found == null) {
      found = section.with(key.amps, section.envelope(), freeAir).heat();
      known.put(key, found);
    }
    return found;
  }

  private static double taken(double amps) {
    return Double.isFinite(amps) ? Math.rint(Math.abs(amps) * PER_AMPERE) / PER_AMPERE : 0;
  }
}
