package org.tugtest.facts;

import org.tugtest.model.Reading;
import org.tugtest.network.Point;
import org.tugtest.text.Place;

/**
 * A reading between two points that are there.
 *
 * @param reading as written
 * @param from one point
 * @param to another point
 * @param at where it is written
 */
public record TakenReading(Reading reading, Point from, Point to, Place at) {}
