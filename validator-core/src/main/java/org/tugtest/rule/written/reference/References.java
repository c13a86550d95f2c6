package org.tugtest.rule.written.reference;

import java.util.List;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Subject;

/**
 * What came of looking up every name that the files use.
 *
 * @param missing what is named and not there
 * @param fine how many things name only what is there
 * @param unjudged things of which a name could not be judged, with the reason
 */
public record References(List<Missing> missing, int fine, Map<Subject, String> unjudged) {
  public References {
    missing = List.copyOf(missing);
    unjudged = Map.copyOf(unjudged);
  }

  /** Looks up every name that the files of a harness use. */
  public static References of(Facts facts) {
    Tables tables = new Tables(facts);
    Mentions mentions = new Mentions(facts);
    new PartNames(mentions, tables).all();
    new DeviceNames(mentions, tables).all();
    new WiringNames(mentions, tables).all();
    new StateNames(mentions, tables).all();
    PlaceNames places = new PlaceNames(mentions, tables);
    new TeamNames(mentions, tables, places).all();
    return mentions.result(tables);
  }
}
