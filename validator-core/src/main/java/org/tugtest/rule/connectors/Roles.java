package org.tugtest.rule.connectors;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import org.tugtest.facts.Facts;
import org.tugtest.model.Device;
import org.tugtest.model.DeviceType;
import org.tugtest.model.Element;
import org.tugtest.network.Net;
import org.tugtest.network.Nets;
import org.tugtest.network.Point;
import org.tugtest.network.Sides;

/** What each contact carries, as far as sources and signal pins tell. */
final class Roles {
  /** What a contact carries. */
  enum Role {
    FEED("feed"),
    RETURN("return"),
    SIGNAL("signal"),
    /** Feed or return, as switches stand. */
    EITHER("feed or return"),
    UNKNOWN("");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    /** In brackets after a name; nothing when it is not known. */
    String shown() {
      return word.isEmpty() ? "" : " (" + word + ")";
    }

    /** Whether one is feed and the other is return or signal. */
    boolean clashesWith(Role other) {
      return (this == FEED && other.harmedByFeed()) || (other == FEED && harmedByFeed());
    }

    private boolean harmedByFeed() {
      return this == RETURN || this == SIGNAL;
    }
  }

  private final Sides sides;
  private final Nets nets;
  private final Set<Net> signals = Collections.newSetFromMap(new IdentityHashMap<>());

  Roles(Facts facts) {
    this.sides = facts.sides();
    this.nets = facts.nets();
    for (Device device : facts.harness().devices().values()) {
      DeviceType type = facts.harness().typeOf(device);
      if (type != null) {
        for (Element element : type.elements().values()) {
          if (element instanceof Element.Signal) {
            element
                .ends()
                .forEach(pin -> nets.of(Point.pin(device.id(), pin)).ifPresent(signals::add));
          }
        }
      }
    }
  }

  /** What a contact carries; a net with a signal that feed also reaches counts as feed. */
  Role of(Point point) {
    boolean feed = sides.feed().reaches(point);
    boolean back = sides.back().reaches(point);
    if (feed) {
      return back ? Role.EITHER : Role.FEED;
    }
    if (back) {
      return Role.RETURN;
    }
    return nets.of(point).filter(signals::contains).isPresent() ? Role.SIGNAL : Role.UNKNOWN;
  }
}
