package org.leafward.register.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.climate.Microclimate;
import org.leafward.climate.Place;
import org.leafward.measure.GeoPoint;
import org.leafward.register.NewSite;
import org.leafward.register.Site;
import org.leafward.register.SiteFeature;
import org.leafward.register.SiteId;
import org.leafward.register.SiteSetting;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.springframework.data.domain.Persistable;

/** A site as a row. */
@Entity
@Table(schema = "register", name = "site")
public class SiteEntity implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column
	private UUID owner;

	@Column
	private String name;

	@Column
	private String county;

	@Column
	private double latitude;

	@Column
	private double longitude;

	@Column(name = "elevation_metres")
	private double elevationMetres;

	@Column
	private String zone;

	@Column
	@Enumerated(EnumType.STRING)
	private SoilTexture soil;

	@Column
	@Enumerated(EnumType.STRING)
	private Sun sun;

	@Column
	@Enumerated(EnumType.STRING)
	private Wind wind;

	@Column
	@Enumerated(EnumType.STRING)
	private Microclimate.Lie lie;

	@Column(name = "near_wall")
	private boolean nearWall;

	@Column(name = "in_town")
	private boolean inTown;

	@Column(name = "measured_offset_celsius")
	private @Nullable Double measuredOffsetCelsius;

	@Column
	private String region;

	@Column
	private boolean irrigation;

	@Column
	private boolean volunteers;

	@Column(name = "litres_per_minute")
	private @Nullable Double litresPerMinute;

	@Column(name = "created_at")
	private Instant createdAt;

	private transient boolean fresh;

	/** For JPA. */
	protected SiteEntity() {
	}

	/**
	 * A new row.
	 * @param id identifier
	 * @param owner whose site it is
	 * @param site what is known of it
	 * @param createdAt when it was registered
	 */
	public SiteEntity(UUID id, PersonId owner, NewSite site, Instant createdAt) {
		this.id = id;
		this.owner = owner.value();
		this.name = site.name();
		this.county = site.county();
		this.zone = site.zone().getId();
		this.soil = site.soil();
		this.sun = site.sun();
		this.wind = site.wind();
		this.createdAt = createdAt;
		this.fresh = true;
		put(new SiteSetting(new Place(site.point(), site.microclimate()), site.region(), site.features(),
				site.litresPerMinute()));
	}

	/**
	 * Changes position, height, microclimate, region, features and flow of water.
	 * @param setting the new ones
	 */
	public final void put(SiteSetting setting) {
		Place place = setting.place();
		this.region = setting.region();
		this.irrigation = setting.features().contains(SiteFeature.IRRIGATION);
		this.litresPerMinute = setting.litresPerMinute();
		this.volunteers = setting.features().contains(SiteFeature.VOLUNTEERS);
		this.latitude = place.point().latitude();
		this.longitude = place.point().longitude();
		this.elevationMetres = place.point().elevationMetres();
		this.lie = place.microclimate().lie();
		this.nearWall = place.microclimate().nearWall();
		this.inTown = place.microclimate().inTown();
		this.measuredOffsetCelsius = place.microclimate().measuredOffsetCelsius();
	}

	/**
	 * Changes county, time zone and soil.
	 * @param county the new county
	 * @param zone the new time zone
	 * @param soil the new soil
	 */
	public void put(String county, ZoneId zone, SoilTexture soil) {
		this.county = county;
		this.zone = zone.getId();
		this.soil = soil;
	}

	/**
	 * The row as others see it.
	 * @return the site
	 */
	public Site toSite() {
		return new Site(new SiteId(this.id), new PersonId(this.owner), this.name, this.county,
				new GeoPoint(this.latitude, this.longitude, this.elevationMetres), ZoneId.of(this.zone), this.soil,
				this.sun, this.wind, new Microclimate(this.lie, this.nearWall, this.inTown, this.measuredOffsetCelsius),
				this.region, features(), this.litresPerMinute);
	}

	private Set<SiteFeature> features() {
		Set<SiteFeature> features = EnumSet.noneOf(SiteFeature.class);
		if (this.irrigation) {
			features.add(SiteFeature.IRRIGATION);
		}
		if (this.volunteers) {
			features.add(SiteFeature.VOLUNTEERS);
		}
		return features;
	}

	@Override
	public UUID getId() {
		return this.id;
	}

	/** Identifiers are ours, so presence of one doesn't mean presence of the row. */
	@Override
	public boolean isNew() {
		return this.fresh;
	}

}
