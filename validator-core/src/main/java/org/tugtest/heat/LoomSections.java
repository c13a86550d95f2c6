package org.tugtest.heat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tugtest.model.Group;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;
import org.tugtest.model.Wire;
import org.tugtest.network.Wiring;
import org.tugtest.route.Bundle;
import org.tugtest.route.Bundles;
import org.tugtest.route.Route;
import org.tugtest.route.Routes;
import org.tugtest.route.Strand;
import org.tugtest.table.Cited;

/**
 * All sections through the looms of a harness, and by which of them each wire runs: every bundle
 * along the segments, and the free ends of the wires, each alone in the air of its node. A wire
 * without a route is alone in the air of its warmer end.
 */
public final class LoomSections {
  /** Where a wire without a route is. */
  static final String ALL_ITS_WAY = "all its way";

  private final List<Section> sections = new ArrayList<>();
  private final List<Bundle> laid = new ArrayList<>();
  private final Map<String, List<Stretch>> byWire = new HashMap<>();
  private final Map<String, Optional<WireForm>> forms = new HashMap<>();
  private final Harness harness;
  private final WireForms wireForms;
  private final Bundles bundles;
  private final AlongRoute along;

  /**
   * A wire in a section.
   *
   * @param section number of the section
   * @param place number of its conductor there
   * @param mm length
   */
  public record Stretch(int section, int place, double mm) {}

  private LoomSections(
      Harness harness, WireForms wireForms, Wiring wiring, Routes routes, Bundles bundles) {
    this.harness = harness;
    this.wireForms = wireForms;
    this.bundles = bundles;
    this.along = new AlongRoute(harness, wiring, routes, bundles);
  }

  /** The sections of a harness. */
  public static LoomSections of(
      Harness harness, WireForms wireForms, Wiring wiring, Routes routes, Bundles bundles) {
    LoomSections all = new LoomSections(harness, wireForms, wiring, routes, bundles);
    for (Map.Entry<String, List<Bundle>> entry : bundles.all().entrySet()) {
      entry.getValue().forEach(bundle -> all.add(entry.getKey(), bundle));
    }
    for (Wire wire : harness.wires().values()) {
      Route route = routes.of(wire.id()).orElse(null);
      if (route != null) {
        all.addEnds(wire, route);
      } else {
        all.addAlone(wire, ALL_ITS_WAY, all.along.atEnds(wire), 1);
      }
    }
    return all;
  }

  private void add(String segment, Bundle bundle) {
    Layout.Segment its = harness.layout().segments().get(segment);
    Envelope envelope =
        its == null
            ? Envelope.BARE
            : Coverings.around(harness.parts().coverings(), its.coverings(), bundle.expectedMm());
    Double length = its == null ? null : its.lengthMm();
    String where = bundle.text(length == null ? bundle.toMm() : length);
    List<Section.Conductor> conductors = new ArrayList<>();
    List<String> unsized = new ArrayList<>();
    for (Strand strand : bundle.strands()) {
      strand.wires().forEach(wire -> add(wire, bundle, conductors, unsized));
    }
    for (String id : bundle.unsized()) {
      wiresOf(id).forEach(wire -> add(wire, bundle, conductors, unsized));
    }
    Cited air = bundles.surroundings().ofSegment(segment).ambientC();
    sections.add(new Section(where, conductors, unsized, envelope, air));
    laid.add(bundle);
  }

  private Set<String> wiresOf(String id) {
    Group group = harness.wires().containsKey(id) ? null : harness.groups().get(id);
    if (group == null) {
      return Set.of(id);
    }
    Set<String> wires = new LinkedHashSet<>(group.wires());
    if (group.screen() != null) {
      wires.add(group.screen());
    }
    return wires;
  }

  private void add(
      String wire, Bundle bundle, List<Section.Conductor> conductors, List<String> unsized) {
    WireForm form = form(wire).orElse(null);
    if (form == null) {
      unsized.add(wire);
    } else {
      meets(wire, new Stretch(sections.size(), conductors.size(), bundle.lengthMm()));
      conductors.add(new Section.Conductor(wire, form));
    }
  }

  private void addEnds(Wire wire, Route route) {
    Cited from = along.at(route.from()).ambientC();
    Cited to = along.at(route.to()).ambientC();
    double mm = route.allowances().stream().mapToDouble(each -> each.mm()).sum();
    boolean nowhere = !byWire.containsKey(wire.id());
    double least = nowhere && mm <= 0 ? 1 : mm;
    if (from.equals(to)) {
      addAlone(wire, "its ends", from, least);
    } else {
      addAlone(wire, "its end at " + route.from().text(), from, least / 2);
      addAlone(wire, "its end at " + route.to().text(), to, least / 2);
    }
  }

  private void addAlone(Wire wire, String where, Cited air, double mm) {
    WireForm form = form(wire.id()).orElse(null);
    if (form != null && mm > 0) {
      meets(wire.id(), new Stretch(sections.size(), 0, mm));
      List<Section.Conductor> one = List.of(new Section.Conductor(wire.id(), form));
      sections.add(new Section(where, one, List.of(), Envelope.BARE, air));
    }
  }

  private void meets(String wire, Stretch stretch) {
    byWire.computeIfAbsent(wire, none -> new ArrayList<>()).add(stretch);
  }

  private Optional<WireForm> form(String id) {
    return forms.computeIfAbsent(
        id, none -> Optional.ofNullable(harness.wires().get(id)).flatMap(wireForms::of));
  }

  /** All sections, by their numbers. */
  public List<Section> all() {
    return Collections.unmodifiableList(sections);
  }

  /** The section of a stretch. */
  public Section at(Stretch stretch) {
    return sections.get(stretch.section());
  }

  /**
   * The bundle that a section is; empty for a free end. Its circles come before the wires without
   * one among the conductors.
   */
  Optional<Bundle> bundle(int section) {
    return section < laid.size() ? Optional.of(laid.get(section)) : Optional.empty();
  }

  /** By which sections a wire runs; none when its size is not known. */
  public List<Stretch> of(String wire) {
    return Collections.unmodifiableList(byWire.getOrDefault(wire, List.of()));
  }
}
