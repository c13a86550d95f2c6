package org.tugtest.route;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Near;
import org.tugtest.model.Need;
import org.tugtest.model.Zone;
import org.tugtest.table.Cited;

/**
 * What is round each node and segment: its zone's air, wet, needs and neighbours. A segment without
 * a zone has the worse of its nodes, field by field; where nothing gives a temperature, {@code
 * ambientC} of {@code defaults} holds.
 */
public final class Surroundings {
  private final Harness harness;
  private final boolean defaultGiven;

  /**
   * What is round one thing.
   *
   * @param ambientC air temperature, degrees Celsius; the source names the zone or the default
   * @param moisture how wet it gets; null when nothing says so
   * @param byDefault what gives no temperature, so that the default was taken; empty when all do
   */
  public record Around(
      Cited ambientC,
      Zone.@Nullable Moisture moisture,
      Set<Need> needs,
      Set<Near> near,
      List<String> byDefault) {
    public Around {
      needs = Set.copyOf(needs);
      near = Set.copyOf(near);
      byDefault = List.copyOf(byDefault);
    }
  }

  /**
   * The surroundings in a harness.
   *
   * @param givenDefaults names of the fields that {@code defaults} of the root gives
   */
  public Surroundings(Harness harness, Set<String> givenDefaults) {
    this.harness = harness;
    this.defaultGiven = givenDefaults.contains("ambientC");
  }

  /** What is round a segment; one that is not there has the defaults. */
  public Around ofSegment(String id) {
    Layout.Segment segment = harness.layout().segments().get(id);
    if (segment == null || (segment.zone() == null && segment.from() == null)) {
      return ofZone(null, "segment " + id);
    }
    if (segment.zone() != null) {
      return ofZone(segment.zone(), "segment " + id);
    }
    Around one = ofNode(String.valueOf(segment.from()));
    return segment.to() == null ? one : worse(one, ofNode(segment.to()));
  }

  /** What is round a node; one that is not there has the defaults. */
  public Around ofNode(String id) {
    Layout.Node node = harness.layout().nodes().get(id);
    return ofZone(node == null ? null : node.zone(), "node " + id);
  }

  /** The worse of the two in each field. */
  public static Around worse(Around one, Around other) {
    Set<Need> needs = EnumSet.noneOf(Need.class);
    needs.addAll(one.needs());
    needs.addAll(other.needs());
    Set<Near> near = EnumSet.noneOf(Near.class);
    near.addAll(one.near());
    near.addAll(other.near());
    Zone.Moisture wet = one.moisture();
    if (wet == null || (other.moisture() != null && other.moisture().compareTo(wet) > 0)) {
      wet = other.moisture();
    }
    List<String> byDefault = new ArrayList<>(one.byDefault());
    other.byDefault().stream().filter(text -> !byDefault.contains(text)).forEach(byDefault::add);
    Cited hotter =
        other.ambientC().value() > one.ambientC().value() ? other.ambientC() : one.ambientC();
    return new Around(hotter, wet, needs, near, byDefault);
  }

  private Around ofZone(@Nullable String id, String of) {
    Map<String, Zone> zones = harness.zones();
    Zone zone = id == null ? null : zones.get(id);
    if (zone != null && zone.ambientC() != null) {
      return new Around(
          new Cited(zone.ambientC(), "zone " + id, Basis.GIVEN),
          zone.moisture(),
          zone.needs(),
          zone.near(),
          List.of());
    }
    Cited ambient =
        defaultGiven
            ? new Cited(harness.defaults().ambientC(), "ambientC of defaults", Basis.GIVEN)
            : new Cited(
                harness.defaults().ambientC(), "ambientC of the format", Basis.COMMON_PRACTICE);
    return new Around(
        ambient,
        zone == null ? null : zone.moisture(),
        zone == null ? Set.of() : zone.needs(),
        zone == null ? Set.of() : zone.near(),
        List.of(zone == null ? of + " has no zone" : "zone " + id + " gives no ambientC"));
  }
}
