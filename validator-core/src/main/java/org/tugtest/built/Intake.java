package org.tugtest.built;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.tugtest.facts.AsBuilt;
import org.tugtest.facts.Deviation;
import org.tugtest.facts.Facts;
import org.tugtest.model.BuildRecord;
import org.tugtest.model.Reading;
import org.tugtest.network.Meter;
import org.tugtest.network.MeterOhms;
import org.tugtest.read.ReadFile;

/**
 * All that is told of a harness as it was built, held against the plan.
 *
 * @param asBuilt what fits the plan, for the rules
 * @param built the harness as it was built: the plan with what the records say, or the as-built
 *     harness itself
 * @param entries the entries of records that fit
 * @param refused what does not fit, by place
 */
public record Intake(
    AsBuilt asBuilt, Facts built, List<TakenEntry> entries, List<Refusal> refused) {
  public Intake {
    entries = List.copyOf(entries);
    refused = List.copyOf(refused);
  }

  /**
   * Takes records and readings of a plan.
   *
   * @param records those that name the plan; a record of another revision is refused
   * @param readings all files of readings
   */
  public static Intake of(
      Facts plan,
      List<ReadFile<BuildRecord>> records,
      List<ReadFile<Map<Integer, Reading>>> readings) {
    return of(plan, records, readings, Optional.empty());
  }

  /**
   * The same with a harness file that says how everything was built. What differs from the plan is
   * a deviation; it is accepted where an entry of a record says so of the same thing.
   */
  public static Intake of(
      Facts plan,
      List<ReadFile<BuildRecord>> records,
      List<ReadFile<Map<Integer, Reading>>> readings,
      Optional<Facts> asBuilt) {
    Entries entries = new Entries(plan);
    records.forEach(entries::read);
    Facts built = asBuilt.orElseGet(() -> Altered.of(plan, entries.taken()));
    List<Deviation> deviations = new ArrayList<>();
    if (asBuilt.isPresent()) {
      deviations.addAll(new BuiltHarness(plan, built).deviations(entries.taken()));
    } else {
      entries.taken().forEach(entry -> deviations.add(entry.deviation()));
    }
    Readings taken = new Readings(built);
    readings.forEach(taken::read);
    TreeSet<Refusal> refused = new TreeSet<>(entries.refused());
    refused.addAll(taken.refused());
    return new Intake(
        new AsBuilt(deviations, taken.taken(), meter(built)),
        built,
        entries.taken(),
        List.copyOf(refused));
  }

  /**
   * The plan with those of its deviations that are left as they were built: what the loom becomes
   * when only the others are put right. What no entry of a record tells comes from the plan.
   */
  public Facts planWith(Facts plan, Collection<Deviation> left) {
    List<TakenEntry> stay = new ArrayList<>();
    for (TakenEntry entry : entries) {
      Deviation told = entry.deviation();
      if (left.stream().anyMatch(one -> one.isThatOf(told))) {
        stay.add(entry);
      }
    }
    return stay.isEmpty() ? plan : Altered.of(plan, stay);
  }

  /** Everything plugged together, fuses pulled, switches open. */
  private static Meter meter(Facts built) {
    MeterOhms ohms =
        new MeterOhms(built.harness(), built.wiring(), built.fitting(), built.lengths());
    return Meter.of(built.network().points(), built.network().edges(), ohms);
  }
}
