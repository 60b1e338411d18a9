package org.leafward.register.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.data.domain.Persistable;

/** A planting as a row. */
@Entity
@Table(schema = "register", name = "planting")
public class PlantingEntity implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column
	private UUID site;

	@Column
	private String species;

	@Column
	private String label;

	@Column
	private int count;

	@Column(name = "planted_on")
	private LocalDate plantedOn;

	@Column
	@Enumerated(EnumType.STRING)
	private Placement placement;

	@Column(name = "winters_indoors")
	private boolean wintersIndoors;

	@Column(name = "salt_exposed")
	private boolean saltExposed;

	@Column(name = "created_at")
	private Instant createdAt;

	private transient boolean fresh;

	/** For JPA. */
	protected PlantingEntity() {
	}

	/**
	 * A new row.
	 * @param id identifier
	 * @param site where it grows
	 * @param planting what is known of it
	 * @param createdAt when it was registered
	 */
	public PlantingEntity(UUID id, SiteId site, NewPlanting planting, Instant createdAt) {
		this.id = id;
		this.site = site.value();
		this.species = planting.species().value();
		this.label = planting.label();
		this.count = planting.count();
		this.plantedOn = planting.plantedOn();
		this.placement = planting.placement();
		this.wintersIndoors = planting.wintersIndoors();
		this.saltExposed = planting.saltExposed();
		this.createdAt = createdAt;
		this.fresh = true;
	}

	/**
	 * The row as others see it.
	 * @return the planting
	 */
	public Planting toPlanting() {
		return new Planting(new PlantingId(this.id), new SiteId(this.site), new SpeciesId(this.species), this.label,
				this.count, this.plantedOn, this.placement, this.wintersIndoors, this.saltExposed);
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
