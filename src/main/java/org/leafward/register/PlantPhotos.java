package org.leafward.register;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.photo.Photo;
import org.leafward.pages.photo.PhotoReader;
import org.leafward.register.store.PlantPhotoTable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Photos of plantings. What is sent is drawn anew, so nothing that a file carries is
 * kept. No task comes of a photo, so nobody hears of one.
 */
@Service
public class PlantPhotos {

	/** Photos of one planting: one for each season of two years. */
	public static final int MOST = 8;

	/** Photos of all plantings of a site, which is some 100 MB at most. */
	static final int MOST_OF_SITE = 200;

	private static final int LONGEST_WORDS = 200;

	private static final int EARLIEST_YEAR = 1900;

	private final PlantPhotoTable photos;

	private final Clock clock;

	private final TransactionTemplate transaction;

	PlantPhotos(PlantPhotoTable photos, Clock clock, PlatformTransactionManager transactions) {
		this.photos = photos;
		this.clock = clock;
		this.transaction = new TransactionTemplate(transactions);
	}

	/**
	 * The day that it is at a site.
	 * @param site the site
	 * @return in its time zone
	 */
	public LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

	/**
	 * Adds a photo.
	 * @param site where
	 * @param planting one of its plantings
	 * @param file a JPEG or PNG
	 * @param words what is seen on it, 1 to 200 characters
	 * @param day on which it was taken, as an ISO date
	 * @return the photo
	 * @throws NotThere when the site has no such planting
	 * @throws BadInput when it is no photo that we take, the words or the day can't be
	 * used, the planting has {@value #MOST}, or the site {@value #MOST_OF_SITE}
	 */
	public PlantPhoto add(Site site, PlantingId planting, byte[] file, String words, String day) {
		Findings all = new Findings();
		Supplier<String> clean = all.read(() -> words(words));
		Supplier<LocalDate> taken = all.read(() -> day(site, day));
		// Drawn outside of the transaction: it takes a second, and no connection.
		Supplier<Photo> drawn = all.read(() -> {
			bounds(site.id(), planting);
			return PhotoReader.read(file);
		});
		return all.give(() -> {
			PlantPhoto photo = new PlantPhoto(UUID.randomUUID(), planting, drawn.get().width(), drawn.get().height(),
					clean.get(), taken.get(), this.clock.instant().truncatedTo(ChronoUnit.MICROS));
			this.transaction.executeWithoutResult((status) -> {
				bounds(site.id(), planting);
				this.photos.add(photo, drawn.get().jpeg());
			});
			return photo;
		});
	}

	private static String words(String words) {
		String clean = Given.line("words", words.strip());
		if (clean.isEmpty()) {
			throw new BadInput("nothing says what is seen on it", "words",
					"write a few words, such as “buds swell, lower branch bare”");
		}
		if (clean.length() > LONGEST_WORDS) {
			throw new BadInput("the words have %d characters".formatted(clean.length()), "words",
					"use at most %d".formatted(LONGEST_WORDS));
		}
		return clean;
	}

	private LocalDate day(Site site, String text) {
		LocalDate day = Given.date("day", text);
		if (day.isAfter(today(site))) {
			throw new BadInput("%s is still to come".formatted(day), "day", "give the day on which it was taken");
		}
		if (day.getYear() < EARLIEST_YEAR) {
			throw new BadInput("%s is before %d".formatted(day, EARLIEST_YEAR), "day", "look at the year");
		}
		return day;
	}

	private void bounds(SiteId site, PlantingId planting) {
		PlantPhotoTable.Count count = this.transaction.execute((status) -> this.photos.hold(site, planting)
			.orElseThrow(() -> new NotThere("There is no planting " + planting)));
		if (count.ofPlanting() >= MOST) {
			throw new BadInput("the planting has %d photos".formatted(MOST), "photo", "delete one first");
		}
		if (count.ofSite() >= MOST_OF_SITE) {
			throw new BadInput("the site has %d photos".formatted(MOST_OF_SITE), "photo", "delete one first");
		}
	}

	/**
	 * The photos of a planting.
	 * @param planting which
	 * @return at most {@value #MOST}, the latest day first
	 */
	public List<PlantPhoto> of(PlantingId planting) {
		return this.photos.of(planting);
	}

	/**
	 * The photos of a site.
	 * @param site which
	 * @return at most {@value #MOST_OF_SITE}
	 */
	public List<PlantPhoto> of(SiteId site) {
		return this.photos.of(site);
	}

	/**
	 * The picture.
	 * @param planting the planting
	 * @param photo which of its photos
	 * @return a JPEG; empty when the planting has no such photo
	 */
	public Optional<byte[]> picture(PlantingId planting, UUID photo) {
		return this.photos.content(planting, photo);
	}

	/**
	 * The pictures of a person's plants.
	 * @param person who
	 * @param most how many, the latest first
	 * @return JPEG by identifier
	 */
	public Map<UUID, byte[]> picturesOf(PersonId person, int most) {
		return this.photos.contentsOf(person, most);
	}

	/**
	 * Deletes a photo.
	 * @param planting the planting
	 * @param photo which of its photos
	 * @throws NotThere when it has none such
	 */
	public void remove(PlantingId planting, UUID photo) {
		if (!this.photos.remove(planting, photo)) {
			throw new NotThere("There is no photo " + photo);
		}
	}

}
