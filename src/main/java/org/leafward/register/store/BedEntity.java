package org.leafward.register.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.register.Bed;
import org.leafward.register.BedId;
import org.leafward.register.NewBed;
import org.leafward.register.SiteId;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.springframework.data.domain.Persistable;

/** A bed as a row. */
@Entity
@Table(schema = "register", name = "bed")
public class BedEntity implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column
	private UUID site;

	@Column
	private String name;

	@Column
	@Enumerated(EnumType.STRING)
	private @Nullable Sun sun;

	@Column
	@Enumerated(EnumType.STRING)
	private @Nullable Wind wind;

	@Column(name = "litres_per_minute")
	private @Nullable Double litresPerMinute;

	@Column(name = "created_at")
	private Instant createdAt;

	private transient boolean fresh;

	/** For JPA. */
	protected BedEntity() {
	}

	/**
	 * A new row.
	 * @param id identifier
	 * @param site of which it is a part
	 * @param bed what is known of it
	 * @param createdAt when it was registered
	 */
	public BedEntity(UUID id, SiteId site, NewBed bed, Instant createdAt) {
		this.id = id;
		this.site = site.value();
		this.createdAt = createdAt;
		this.fresh = true;
		put(bed);
	}

	/**
	 * Changes it.
	 * @param bed what it is to be
	 */
	public final void put(NewBed bed) {
		this.name = bed.name();
		this.sun = bed.sun();
		this.wind = bed.wind();
		this.litresPerMinute = bed.litresPerMinute();
	}

	/**
	 * The row as others see it.
	 * @return the bed
	 */
	public Bed toBed() {
		return new Bed(new BedId(this.id), new SiteId(this.site), this.name, this.sun, this.wind, this.litresPerMinute);
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
