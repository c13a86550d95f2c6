package org.tugtest.rule.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.network.Edge;
import org.tugtest.network.Path;
import org.tugtest.network.Point;
import org.tugtest.network.Reach;
import org.tugtest.protect.Isolation;

/**
 * An isolator contact in the earth lead that opens nothing: with every isolator open, what returns
 * on its far side still comes home to a source, by another earth or to another source.
 *
 * @param far its end with the longer way home
 * @param home that way, from the minus of a source to the far end
 */
record EarthLeadPole(Edge.OfElement pole, Point far, Path home) {
  static final String KIND = "earth-lead";

  /** Those of a harness that has isolator contacts in the earth lead alone. */
  static List<EarthLeadPole> all(Facts facts) {
    Isolation isolation = facts.isolation();
    List<EarthLeadPole> all = new ArrayList<>();
    if (isolation.isolators().stream().anyMatch(pole -> isOn(facts.protection().feed(), pole))) {
      return all;
    }
    for (Edge.OfElement pole : isolation.isolators()) {
      Optional<Path> a = isolation.home().path(pole.a());
      Optional<Path> b = isolation.home().path(pole.b());
      if (a.isPresent() && b.isPresent()) {
        boolean farA = a.get().edges().size() > b.get().edges().size();
        all.add(new EarthLeadPole(pole, farA ? pole.a() : pole.b(), farA ? a.get() : b.get()));
      }
    }
    return all;
  }

  /** Whether one of the sides of an isolator contact is on a side of the supply. */
  static boolean isOn(Reach side, Edge.OfElement pole) {
    return side.reaches(pole.a()) || side.reaches(pole.b());
  }

  /** The loads, other than free ones, that stay live and return to its far side. */
  List<Edge.OfElement> live(Facts facts) {
    Reach there = facts.isolation().returning(far);
    return IsolatorBypassed.loads(facts).stream()
        .filter(load -> facts.isolation().liveWay(load).isPresent())
        .filter(load -> there.reaches(load.a()) || there.reaches(load.b()))
        .toList();
  }

  /** The source that what is on its far side returns to. */
  Optional<Edge.OfElement> source(Facts facts) {
    return facts.network().sources().stream()
        .filter(source -> source.b().equals(home.start()))
        .findFirst();
  }

  /** The finding that no load has of its own. */
  Finding.Draft draft() {
    return Finding.on(pole.subject()).kind(KIND);
  }

  /** The identity of what isolator-bypassed says of a contact, if it says it. */
  static Optional<String> identity(Facts facts, Edge.OfElement pole) {
    return all(facts).stream()
        .filter(each -> each.pole().equals(pole))
        .filter(each -> !each.live(facts).isEmpty())
        .map(
            each ->
                each.draft().finish("isolator-bypassed", Level.ERROR, facts.places()).identity())
        .findFirst();
  }
}
