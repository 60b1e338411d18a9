package org.leafward.register.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.register.NewWatering;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.register.Watering;
import org.leafward.register.WateringId;
import org.springframework.data.domain.Persistable;

/** A watering as a row. */
@Entity
@Table(schema = "register", name = "watering")
public class WateringEntity implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column
	private UUID site;

	@Column
	private @Nullable UUID planting;

	@Column
	private LocalDate day;

	@Column
	private double millimetres;

	@Column
	private String note;

	@Column(name = "entered_by")
	private @Nullable UUID enteredBy;

	@Column(name = "entered_at")
	private Instant enteredAt;

	private transient boolean fresh;

	/** For JPA. */
	protected WateringEntity() {
	}

	/**
	 * A new row.
	 * @param id identifier
	 * @param site where
	 * @param watering what was given
	 * @param by who enters it, or null
	 * @param enteredAt when
	 */
	public WateringEntity(UUID id, SiteId site, NewWatering watering, @Nullable PersonId by, Instant enteredAt) {
		this.id = id;
		this.site = site.value();
		this.planting = (watering.planting() != null) ? watering.planting().value() : null;
		this.day = watering.day();
		this.millimetres = watering.millimetres();
		this.note = watering.note();
		this.enteredBy = (by != null) ? by.value() : null;
		this.enteredAt = enteredAt;
		this.fresh = true;
	}

	/**
	 * The row as others see it.
	 * @return the watering
	 */
	public Watering toWatering() {
		return new Watering(new WateringId(this.id), new SiteId(this.site),
				(this.planting != null) ? new PlantingId(this.planting) : null, this.day, this.millimetres, this.note,
				(this.enteredBy != null) ? new PersonId(this.enteredBy) : null, this.enteredAt);
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
