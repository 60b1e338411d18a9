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
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.NewSoilTest;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTestId;
import org.springframework.data.domain.Persistable;

/** A soil test as a row. */
@Entity
@Table(schema = "register", name = "soil_test")
public class SoilTestEntity implements Persistable<UUID> {

	@Id
	private UUID id;

	@Column
	private UUID site;

	@Column
	private @Nullable UUID planting;

	@Column
	private LocalDate day;

	@Column
	private double acidity;

	@Column
	private double conductivity;

	@Enumerated(EnumType.STRING)
	private SoilExtract extract;

	@Column(name = "sodium_ratio")
	private @Nullable Double sodiumRatio;

	@Column(name = "sodium_percent")
	private @Nullable Double sodiumPercent;

	@Column
	private @Nullable Double exchange;

	@Column(name = "depth_centimetres")
	private double depthCentimetres;

	@Enumerated(EnumType.STRING)
	private SoilDrainage drainage;

	@Column
	private String note;

	@Column(name = "entered_by")
	private @Nullable UUID enteredBy;

	@Column(name = "entered_at")
	private Instant enteredAt;

	private transient boolean fresh;

	/** For JPA. */
	protected SoilTestEntity() {
	}

	/**
	 * A new row.
	 * @param id identifier
	 * @param site where
	 * @param test the test
	 * @param by who enters it, or null
	 * @param enteredAt when
	 */
	public SoilTestEntity(UUID id, SiteId site, NewSoilTest test, @Nullable PersonId by, Instant enteredAt) {
		this.id = id;
		this.site = site.value();
		this.planting = (test.planting() != null) ? test.planting().value() : null;
		this.day = test.day();
		this.acidity = test.figures().acidity();
		this.conductivity = test.figures().conductivity();
		this.extract = test.figures().extract();
		this.sodiumRatio = test.figures().sodiumRatio();
		this.sodiumPercent = test.figures().sodiumPercent();
		this.exchange = test.figures().exchange();
		this.depthCentimetres = test.depthCentimetres();
		this.drainage = test.drainage();
		this.note = test.note();
		this.enteredBy = (by != null) ? by.value() : null;
		this.enteredAt = enteredAt;
		this.fresh = true;
	}

	/**
	 * The row as others see it.
	 * @return the test
	 */
	public KeptSoilTest toTest() {
		return new KeptSoilTest(new SoilTestId(this.id), new SiteId(this.site),
				(this.planting != null) ? new PlantingId(this.planting) : null, this.day,
				new SoilFigures(this.acidity, this.conductivity, this.extract, this.sodiumRatio, this.sodiumPercent,
						this.exchange),
				this.depthCentimetres, this.drainage, this.note,
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
