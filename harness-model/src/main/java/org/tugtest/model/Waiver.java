package org.tugtest.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A finding that the team accepts. It covers findings of {@code rule} whose first subject is {@code
 * at}.
 *
 * @param at place ({@code wires/B003})
 * @param until last day it holds; null: for good
 * @param state only in this operating state; null: in all
 */
public record Waiver(
    String id,
    @Nullable String rule,
    @Nullable String at,
    @Nullable String reason,
    @Nullable LocalDate until,
    @Nullable String state) {}
