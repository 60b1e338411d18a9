package org.leafward.register;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Service;

/**
 * Sites as far as whoever asks may open them. This is where it is decided whose a site
 * is; what is others' is not there for them, so that nobody learns what there is.
 */
@Service
public class OpenSites {

	private final Register register;

	private final Beds beds;

	private final Viewers viewers;

	private final SeenSites seen;

	OpenSites(Register register, Beds beds, Viewers viewers, SeenSites seen) {
		this.register = register;
		this.beds = beds;
		this.viewers = viewers;
		this.seen = seen;
	}

	/**
	 * A site to look at on a page: their own, or one in a county that they serve. A look
	 * at somebody else's is noted.
	 * @param id the site
	 * @return the site as far as they may see it
	 * @throws NotThere when there is no such site for them
	 */
	public SeenSite seen(UUID id) {
		Viewer viewer = this.viewers.current();
		Site site = this.register.find(new SiteId(id))
			.filter((found) -> viewer.mayOpen(found.owner().value())
					|| (viewer.serves(found.county()) && !found.owner().equals(PersonId.SERVER)))
			.orElseThrow(() -> noSite(id));
		if (site.owner().value().equals(viewer.person())) {
			return SeenSite.own(site);
		}
		this.seen.note(site);
		return viewer.operator() ? SeenSite.own(site) : SeenSite.coarse(site, this.seen.firstName(site.owner()));
	}

	/**
	 * A site that they may change: their own, any for the operator.
	 * @param id the site
	 * @return the site
	 * @throws NotThere when there is no such site for them
	 */
	public Site own(UUID id) {
		return this.register.find(new SiteId(id)).filter(this::mine).orElseThrow(() -> noSite(id));
	}

	/**
	 * A planting that they may change.
	 * @param id the planting
	 * @return the planting
	 * @throws NotThere when there is no such planting for them
	 */
	public Planting planting(UUID id) {
		return this.register.find(new PlantingId(id))
			.filter((found) -> this.register.find(found.site()).filter(this::mine).isPresent())
			.orElseThrow(() -> new NotThere("There is no planting " + id));
	}

	/**
	 * A bed that they may change.
	 * @param id the bed
	 * @return the bed
	 * @throws NotThere when there is no such bed for them
	 */
	public Bed bed(UUID id) {
		return this.beds.find(new BedId(id))
			.filter((found) -> this.register.find(found.site()).filter(this::mine).isPresent())
			.orElseThrow(() -> new NotThere("There is no bed " + id));
	}

	/**
	 * A page of the sites that they may change, by name: their own, all for the operator.
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<Site> list(int page, int size) {
		Viewer viewer = this.viewers.current();
		if (viewer.operator()) {
			return this.register.sites(page, size);
		}
		UUID person = viewer.person();
		return (person != null) ? this.register.sitesOf(new PersonId(person), page, size) : List.of();
	}

	/**
	 * A page of the plantings that they may change, by site and label: their own, all for
	 * the operator.
	 * @param words as in {@link Register#searchPlantings}
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	public List<Planting> plantings(String words, int page, int size) {
		Viewer viewer = this.viewers.current();
		UUID person = viewer.person();
		if (person == null && !viewer.operator()) {
			return List.of();
		}
		return this.register.searchPlantings((viewer.operator() || person == null) ? null : new PersonId(person), words,
				page, size);
	}

	/**
	 * A page of the sites in the counties that a specialist serves, by county and name,
	 * with coarse positions.
	 * @param page from 0
	 * @param size 1 to 200
	 * @return empty for those who serve none
	 */
	public List<SeenSite> inMyCounties(int page, int size) {
		return this.register.sitesIn(this.viewers.current().counties(), page, size)
			.stream()
			.map((site) -> SeenSite.coarse(site, this.seen.firstName(site.owner())))
			.toList();
	}

	/**
	 * As whom they change a site.
	 * @param site one that they may change
	 * @return null for an operator who changes somebody else's
	 */
	public @Nullable PersonId actor(Site site) {
		return site.owner().value().equals(this.viewers.current().person()) ? site.owner() : null;
	}

	private boolean mine(Site site) {
		return this.viewers.current().mayOpen(site.owner().value());
	}

	private static NotThere noSite(UUID id) {
		return new NotThere("There is no site " + id);
	}

}
