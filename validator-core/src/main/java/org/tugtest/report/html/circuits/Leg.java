package org.tugtest.report.html.circuits;

import org.tugtest.network.Edge;
import org.tugtest.network.Point;

/** One thing on a way, in the direction of the way. */
record Leg(Edge edge, Point from, Point to) {}
