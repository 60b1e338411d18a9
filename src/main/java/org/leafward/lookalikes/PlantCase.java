package org.leafward.lookalikes;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.core.Answers;
import org.leafward.plants.SpeciesId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/**
 * One plant that looks wrong.
 *
 * @param id identifier
 * @param person whose case it is
 * @param site where it grows; null for a plant that is in no register
 * @param planting which planting; null as well then
 * @param species its species; null when the catalogue doesn't have it
 * @param plant what readers call it
 * @param county county of the place; empty when not known
 * @param zone time zone of the place
 * @param seen the day on which it was first seen
 * @param state where it stands
 * @param answers what was answered
 * @param struck lines of the record that don't count
 * @param leading the likeliest cause when it was last answered; null before
 * @param cause what it is taken for; null until somebody says so, and when it is no cause
 * of the key
 * @param basis on what that rests; null until somebody says so
 * @param result what a laboratory or the help desk found, in their words; empty for
 * nothing
 * @param sampledOn when a sample was sent; null when none was
 * @param helpWantedAt when the help desk was asked; null when it wasn't, and then nobody
 * there sees it
 * @param assigned who looks after it; null for nobody yet
 * @param follows the case of an earlier year; null for none
 * @param openedAt when it was opened
 * @param changedAt when anything last changed
 * @param closedOn the day at the place; null while it is open
 */
public record PlantCase(CaseId id, PersonId person, @Nullable SiteId site, @Nullable PlantingId planting,
		@Nullable SpeciesId species, String plant, String county, ZoneId zone, LocalDate seen, CaseState state,
		Answers answers, Set<String> struck, @Nullable String leading, @Nullable String cause, @Nullable Basis basis,
		String result, @Nullable LocalDate sampledOn, @Nullable Instant helpWantedAt, @Nullable PersonId assigned,
		@Nullable CaseId follows, Instant openedAt, Instant changedAt, @Nullable LocalDate closedOn) {

	public PlantCase {
		struck = Set.copyOf(struck);
	}

	public boolean closed() {
		return this.state == CaseState.CLOSED;
	}

}
