package org.leafward.register.store;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.plants.SpeciesId;
import org.leafward.register.BedId;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingFigures;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
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

	@Column(name = "square_metres")
	private @Nullable Double squareMetres;

	@Column(name = "calliper_millimetres")
	private @Nullable Double calliperMillimetres;

	@Column(name = "pot_litres")
	private @Nullable Double potLitres;

	@Column(name = "raised_in")
	@Enumerated(EnumType.STRING)
	private @Nullable RaisedIn raisedIn;

	@Column(name = "lamp_micromoles")
	private @Nullable Double lampMicromoles;

	@Column(name = "lamp_hours")
	private @Nullable Double lampHours;

	@Column
	private @Nullable UUID bed;

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
		put(planting.bed());
		put(planting.size(), planting.raised());
	}

	/**
	 * Changes what amounts and ramps go by.
	 * @param size how large it is
	 * @param raised where it stands before it goes out; null when nobody told
	 */
	public final void put(PlantingSize size, @Nullable Raised raised) {
		this.squareMetres = size.squareMetres();
		this.calliperMillimetres = size.calliperMillimetres();
		this.potLitres = size.potLitres();
		this.raisedIn = (raised != null) ? raised.in() : null;
		this.lampMicromoles = (raised != null) ? raised.micromoles() : null;
		this.lampHours = (raised != null) ? raised.hours() : null;
	}

	/**
	 * Changes what days, amounts and ramps go by.
	 * @param figures what it is to be
	 */
	public void put(PlantingFigures figures) {
		this.plantedOn = figures.plantedOn();
		this.saltExposed = figures.saltExposed();
		put(figures.size(), figures.raised());
	}

	/**
	 * Changes the bed in which it stands.
	 * @param bed a bed of its site, or null
	 * @return whether it stood elsewhere before
	 */
	public final boolean put(@Nullable BedId bed) {
		UUID next = (bed != null) ? bed.value() : null;
		boolean moved = !Objects.equals(next, this.bed);
		this.bed = next;
		return moved;
	}

	/**
	 * The row as others see it.
	 * @return the planting
	 */
	public Planting toPlanting() {
		return new Planting(new PlantingId(this.id), new SiteId(this.site), new SpeciesId(this.species), this.label,
				this.count, this.plantedOn, this.placement, this.wintersIndoors, this.saltExposed,
				new PlantingSize(this.squareMetres, this.calliperMillimetres, this.potLitres),
				(this.raisedIn != null) ? new Raised(this.raisedIn, this.lampMicromoles, this.lampHours) : null,
				(this.bed != null) ? new BedId(this.bed) : null);
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
