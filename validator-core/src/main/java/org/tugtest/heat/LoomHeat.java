package org.tugtest.heat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
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
    Map<Kind, Integer> kinds = new HashMap<>();
    for (int i = 0; i < kind.length; i++) {
      Section section = sections.all().get(i);
      List<WireForm> forms = section.conductors().stream().map(Section.Conductor::form).toList();
      Kind its = new Kind(forms, section.envelope(), section.ambientC().value());
      kind[i] = kinds.computeIfAbsent(its, none -> kinds.size());
    }
  }

  /**
   * The temperatures at these currents.
   *
   * @param amps lasting current of a wire, by id; either way
   * @param before an earlier answer, of which sections with the same currents are kept
   */
  public LoomWarmth at(ToDoubleFunction<String> amps, @Nullable LoomWarmth before) {
    int count = kind.length;
    double[][] currents = new double[count][];
    BundleHeat[] heats = new BundleHeat[count];
    Map<String, Double> taken = new HashMap<>();
    for (int i = 0; i < count; i++) {
      Section section = sections.all().get(i);
      double[] here = new double[section.conductors().size()];
      for (int k = 0; k < here.length; k++) {
        here[k] =
            taken.computeIfAbsent(
                section.conductors().get(k).wire(), id -> taken(amps.applyAsDouble(id)));
      }
      currents[i] = here;
      heats[i] =
          before != null && Arrays.equals(before.amps(i), here)
              ? before.of(i)
              : heat(new Key(kind[i], here), section);
    }
    return new LoomWarmth(sections, currents, heats);
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
