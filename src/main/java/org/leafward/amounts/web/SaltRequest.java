package org.leafward.amounts.web;

import io.swagger.v3.oas.annotations.Parameter;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.GivenFigures;
import org.leafward.amounts.salt.Conductivity;
import org.leafward.amounts.salt.DeIcer;
import org.leafward.amounts.salt.Drainage;
import org.leafward.amounts.salt.Exposure;
import org.leafward.amounts.salt.Extract;
import org.leafward.amounts.salt.SaltedBed;
import org.leafward.climate.core.water.TextureClass;
import org.leafward.measure.Dimension;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;

/** A bed with salt as somebody asks about it; nothing is checked yet. */
record SaltRequest(
		@Parameter(description = "of the bed, m², or with its unit; told for a square metre when left out",
				example = "100 sq ft") @Nullable String area,
		@Parameter(description = "depth of the roots, cm, or with its unit; 30 when left out",
				example = "12 in") @Nullable String rootDepth,
		@Parameter(description = "de-icing, which it is when left out, or fertiliser") @Nullable String cause,
		@Parameter(description = "conductivity of the soil, dS/m, or with its unit; half of the salt is taken out "
				+ "when left out") @Nullable String ec,
		@Parameter(description = "saturated-paste, which it is when left out, or one-to-two") @Nullable String extract,
		@Parameter(description = "texture of the soil, loam when left out") @Nullable String soil,
		@Parameter(
				description = "conductivity wanted, dS/m of the saturated paste, 2 when left out") @Nullable String wanted,
		@Parameter(description = "good, slow, none or untested, which it is when left out") @Nullable String drainage,
		@Parameter(description = "conductivity of the water, dS/m, may be left out") @Nullable String waterEc,
		@Parameter(description = "what is spread on ice: sodium-chloride, calcium-chloride, magnesium-chloride, "
				+ "potassium-chloride, urea, calcium-magnesium-acetate, sand or unknown") @Nullable String product,
		@Parameter(description = "true when it stands along a walk") @Nullable Boolean walk,
		@Parameter(description = "true when it stands along a road") @Nullable Boolean road,
		@Parameter(description = "true when spray reaches it") @Nullable Boolean spray) {

	private static final String CAUSE = "de-icing";

	private static final String PRODUCT = "unknown";

	static SaltRequest usual() {
		return new SaltRequest(null, "30 cm", CAUSE, null, Calculators.EXTRACT, Calculators.SOIL, "2",
				Calculators.DRAINAGE, null, PRODUCT, null, null, null);
	}

	/** The same with what counts where nothing was chosen. */
	SaltRequest shown() {
		return new SaltRequest(this.area, this.rootDepth, Calculators.or(this.cause, CAUSE), this.ec,
				Calculators.or(this.extract, Calculators.EXTRACT), Calculators.or(this.soil, Calculators.SOIL),
				this.wanted, Calculators.or(this.drainage, Calculators.DRAINAGE), this.waterEc,
				Calculators.or(this.product, PRODUCT), this.walk, this.road, this.spray);
	}

	/** Whether somebody asked for anything. */
	boolean asked() {
		return this.area != null || this.rootDepth != null || this.ec != null;
	}

	SaltAnswer answer() {
		Findings all = new Findings();
		Supplier<Optional<Double>> size = all.read(() -> Calculators.quantity(Dimension.AREA, "area", this.area));
		Supplier<Double> depth = all
			.read(() -> Dimension.DEPTH.read("rootDepth", Calculators.or(this.rootDepth, "30")) / 100);
		Supplier<SaltedBed.Cause> why = all
			.read(() -> Given.word("cause", Calculators.or(this.cause, CAUSE), SaltedBed.Cause.class));
		Supplier<Optional<Conductivity>> now = all.read(() -> conductivity(this.ec, this.extract, this.soil));
		Supplier<Double> then = all.read(() -> Dimension.CONDUCTIVITY.read("wanted", Calculators.or(this.wanted, "2")));
		Supplier<Drainage> drains = all
			.read(() -> Given.word("drainage", Calculators.or(this.drainage, Calculators.DRAINAGE), Drainage.class));
		Supplier<Optional<Double>> water = all
			.read(() -> Calculators.quantity(Dimension.CONDUCTIVITY, "waterEc", this.waterEc));
		Supplier<DeIcer> spread = all
			.read(() -> Given.word("product", Calculators.or(this.product, PRODUCT), DeIcer.class));
		return all
			.give(() -> SaltAnswer.of(new SaltedBed(size.get().orElse(null), depth.get(), drains.get(), why.get()),
					now.get().orElse(null), then.get(), water.get().orElse(null), exposures(), spread.get()));
	}

	static Optional<Conductivity> conductivity(@Nullable String ec, @Nullable String extract, @Nullable String soil) {
		Findings all = new Findings();
		Supplier<Optional<Double>> measured = all.read(() -> Calculators.quantity(Dimension.CONDUCTIVITY, "ec", ec));
		Supplier<Extract> how = all
			.read(() -> Given.word("extract", Calculators.or(extract, Calculators.EXTRACT), Extract.class));
		Supplier<TextureClass> texture = all.read(() -> TextureClass.named(Calculators.or(soil, Calculators.SOIL)));
		return all.give(() -> measured.get().map((value) -> new Conductivity(value, how.get(), texture.get())));
	}

	/** What it tells of the bed; asked once there is an answer. */
	GivenFigures figures() {
		boolean deIcing = Given.word("cause", Calculators.or(this.cause, CAUSE),
				SaltedBed.Cause.class) == SaltedBed.Cause.DE_ICING;
		return GivenFigures.ofSalt(Calculators.quantity(Dimension.AREA, "area", this.area).orElse(null),
				deIcing || !exposures().isEmpty());
	}

	private Set<Exposure> exposures() {
		Set<Exposure> exposures = EnumSet.noneOf(Exposure.class);
		if (Boolean.TRUE.equals(this.walk)) {
			exposures.add(Exposure.WALK);
		}
		if (Boolean.TRUE.equals(this.road)) {
			exposures.add(Exposure.ROAD);
		}
		if (Boolean.TRUE.equals(this.spray)) {
			exposures.add(Exposure.SPRAY);
		}
		return exposures;
	}

}
