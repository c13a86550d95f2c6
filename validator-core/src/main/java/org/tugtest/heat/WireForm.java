package org.tugtest.heat;

import org.tugtest.finding.Basis;

/**
 * What the heat of a wire depends on.
 *
 * @param insulated its conductor and insulation
 * @param maxC temperature class
 * @param basis the weakest of its figures
 */
public record WireForm(Insulated insulated, double maxC, Basis basis) {}
