package org.leafward.advisories;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.register.SiteId;

/** Advisories that were sent, as everybody may read them. */
public interface Advisories {

	/**
	 * An advisory as its latest message says it.
	 * @param id the advisory
	 * @return empty when there is none
	 */
	Optional<Advisory> find(AdvisoryId id);

	/**
	 * What is in force or ahead everywhere. Answered from memory.
	 * @return what begins first comes first
	 */
	List<Advisory> current();

	/**
	 * What is in force or ahead in a county.
	 * @param county its code
	 * @return what begins first comes first
	 */
	List<Advisory> current(String county);

	/**
	 * What is in force or ahead in a county, or ended or was called off within the last
	 * days.
	 * @param county its code
	 * @param days how far back, 0 to 60
	 * @return what begins first comes first
	 */
	List<Advisory> ofCounty(String county, int days);

	/**
	 * What is in force or ahead for sites, by where they are and what grows there. Costs
	 * nothing while nothing is in force.
	 * @param sites at most 1,000
	 * @return only sites that something concerns
	 */
	Map<SiteId, List<Advisory>> currentFor(Collection<SiteId> sites);

	/**
	 * What is in force or ahead for somebody's sites, or ended or was called off within
	 * the last days.
	 * @param person who
	 * @param days how far back, 0 to 60
	 * @return what begins first comes first
	 */
	List<Advisory> of(PersonId person, int days);

	/**
	 * Whom an advisory concerns, in the order of their identifiers: those who have a site
	 * in the area where one of the plants grows, by its latest message or an earlier one,
	 * since who was told once must hear of it when it is changed or called off.
	 * @param id the advisory
	 * @param after the last one of the page before; null for the first page
	 * @param size 1 to 10,000
	 * @return empty at the end
	 */
	List<PersonId> concerned(AdvisoryId id, @Nullable PersonId after, int size);

	/**
	 * Whom the latest message of an advisory concerns, in the order of their identifiers.
	 * @param id the advisory
	 * @param after the last one of the page before; null for the first page
	 * @param size 1 to 10,000
	 * @return empty at the end
	 */
	List<PersonId> concernedNow(AdvisoryId id, @Nullable PersonId after, int size);

}
