package org.tugtest.rule.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.finding.Subject;
import org.tugtest.model.Wire;
import org.tugtest.model.WirePart;
import org.tugtest.network.Edge;
import org.tugtest.rule.Example;
import org.tugtest.rule.Heading;
import org.tugtest.rule.Ledger;
import org.tugtest.rule.Rule;
import org.tugtest.rule.RuleInfo;
import org.tugtest.rule.Settings;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** An area in mm2 that is more likely the number of an American wire gauge. */
public final class AreaReadsAsGauge implements Rule {
  private static final int SHOWN = 4;
  private static final String UNKNOWN = "nothing tells whether mm2 or a gauge is meant";
  private static final RuleInfo INFO =
      RuleInfo.of("area-reads-as-gauge", Heading.WRITTEN, Level.WARNING)
          .gravest(Level.ERROR)
          .summary("areaMm2 holds what reads as the number of an American wire gauge")
          .subjects("wires that are given by areaMm2")
          .looksFor(
              """
              A wire, or the part it is made of, with areaMm2 of 12, 14, 18, 20, 22, 24, 26, 28 or
              30, where something else says that the wire is thin: its outerMm is less than copper
              of that area is wide, which is an error; the terminal at an end takes the gauge and
              not the area; it ends on a pin of a signal; or in no lasting state it carries more
              than half of what the gauge stands, no fuse lets through more than the gauge stands
              twice over, and the gauge would lose no more than half a volt. Wires alike are one
              finding. Of 10, 16, 25 and 35 nothing is said: they are areas that are made. Nor of 8,
              since a gauge of 8 has 8.4 mm2. Where nothing speaks for the gauge the wire is fine
              if it is known to carry more, else it is not judged.
              """)
          .why(
              """
              An AWG 20 wire has 0.52 mm2. Taken for 20 mm2 it passes every rule on fuses, heat and
              volts that it should fail, and its mass and bundle come out many times too great.
              """)
          .remedy("Write \"awg\": \"20\" in place of \"areaMm2\": 20, or the area that is meant.")
          .basis(
              """
              The sizes of IEC 60228: 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95 and
              120 mm2; none of the numbers here is one. ISO 6722 has 12, 20 and 30 mm2 too, from
              memory, which is why the number alone is no finding. Areas of gauges: ASTM B258.
              Half of what it stands, twice its fuse and half a volt: chosen.
              """)
          .failing(example("\"areaMm2\": 20"))
          .passing(example("\"areaMm2\": 0.5"))
          .build();

  private static String example(String size) {
    return Example.filled(
        """
        {"format": 1, "sketch": true,
         "devices": {
           "ECU": {"elements": {"temp": {"kind": "signal", "pin": "1", "type": "analog"}}},
           "SENSOR": {"elements": {"out": {"kind": "signal", "pin": "1", "type": "analog"}}}},
         "wires": {"W1": {"from": "ECU:1", "to": "SENSOR:1", %s}}}
        """,
        size);
  }

  @Override
  public RuleInfo info() {
    return INFO;
  }

  /** A wire that reads as a gauge. */
  private record Read(Wire wire, GaugeSigns.Sign sign) {}

  @Override
  public void judge(Facts facts, Settings settings, Ledger ledger) {
    GaugeSigns signs = new GaugeSigns(facts);
    Map<String, List<Read>> found = new TreeMap<>();
    for (Edge edge : facts.network().edges()) {
      if (edge instanceof Edge.OfWire wire) {
        judge(facts, signs, wire, found, ledger);
      }
    }
    found.values().forEach(alike -> ledger.finding(finding(alike), subjects(alike)));
  }

  private static void judge(
      Facts facts,
      GaugeSigns signs,
      Edge.OfWire edge,
      Map<String, List<Read>> found,
      Ledger ledger) {
    Wire wire = edge.wire();
    WirePart part = wire.part() == null ? null : facts.harness().parts().wires().get(wire.part());
    Double area = part == null ? wire.areaMm2() : part.areaMm2();
    if (area == null) {
      return;
    }
    Optional<String> gauge = GaugeSigns.gauge(area);
    if (gauge.isEmpty()) {
      ledger.fine();
      return;
    }
    Optional<GaugeSigns.Sign> sign = signs.of(edge, part, gauge.get());
    if (sign.isPresent()) {
      String key = gauge.get() + " " + (part == null ? "" : part.id()) + " " + sign.get().sure();
      found.computeIfAbsent(key, none -> new ArrayList<>(1)).add(new Read(wire, sign.get()));
    } else if (signs.carriesMore(edge, gauge.get())) {
      ledger.fine();
    } else {
      ledger.notJudged(Subject.wire(wire.id()), UNKNOWN);
    }
  }

  private static List<Subject> subjects(List<Read> alike) {
    return alike.stream().map(each -> Subject.wire(each.wire().id())).toList();
  }

  private static Finding.Draft finding(List<Read> alike) {
    Read first = alike.get(0);
    String gauge = first.sign().gauge();
    @Nullable String part = first.wire().part();
    List<String> ids = alike.stream().map(each -> each.wire().id()).toList();
    String who =
        part == null
            ? (ids.size() == 1 ? "wire " : "wires ") + Series.and(ids, SHOWN)
            : "wire part " + part;
    boolean one = part != null || ids.size() == 1;
    Subject subject = part == null ? Subject.wire(first.wire().id()) : Subject.part("wires", part);
    Finding.Draft draft =
        Finding.on(subject)
            .level(first.sign().sure() ? Level.ERROR : Level.WARNING)
            .message(
                who
                    + (one ? " gives " : " give ")
                    + gauge
                    + " mm2, but "
                    + first.sign().words()
                    + "; did you mean AWG "
                    + gauge
                    + String.format(Locale.ROOT, " (%.2f mm2)?", GaugeSigns.areaMm2(gauge)))
            .remedy("write \"awg\": " + Quoted.text(gauge) + " in place of \"areaMm2\": " + gauge)
            .basis(first.sign().sure() ? Basis.GIVEN : Basis.COMMON_PRACTICE);
    for (Read each : alike) {
      if (part != null || !each.equals(first)) {
        draft.and(Subject.wire(each.wire().id()));
      }
      draft.detail(each.wire().id() + ": " + each.sign().words());
    }
    return draft;
  }
}
