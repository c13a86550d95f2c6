package org.tugtest.protect;

import org.tugtest.network.Edge;
import org.tugtest.network.Path;

/**
 * A way from the plus of a source to its minus that no load is in.
 *
 * @param source the source that it shorts, alone or with others that are on the way
 * @param way from plus to minus
 * @param culprit what on the way leaves most loads between plus and minus when it is taken out
 */
public record DeadShort(Edge.OfElement source, Path way, Edge culprit) {
  /** So many are told of one kind; who puts them right sees the rest. */
  public static final int MOST = 20;
}
