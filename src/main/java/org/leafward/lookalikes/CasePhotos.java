package org.leafward.lookalikes;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.pages.photo.Photo;
import org.leafward.pages.photo.PhotoReader;
import org.leafward.lookalikes.store.CaseTable;
import org.leafward.lookalikes.store.PhotoTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Photos of cases. What is sent is drawn anew, so nothing that a file carries is kept.
 */
@Service
public class CasePhotos {

	/** Photos of one case. */
	public static final int MOST = 8;

	private static final int LONGEST_WORDS = 200;

	private final CaseTable cases;

	private final PhotoTable photos;

	private final Cases all;

	private final TransactionTemplate transaction;

	CasePhotos(CaseTable cases, PhotoTable photos, Cases all, PlatformTransactionManager transactions) {
		this.cases = cases;
		this.photos = photos;
		this.all = all;
		this.transaction = new TransactionTemplate(transactions);
	}

	/**
	 * Adds a photo.
	 * @param id the case
	 * @param file a JPEG or PNG
	 * @param words what it shows, at most 200 characters; may be empty
	 * @return the photo
	 * @throws NotThere when there is no such case
	 * @throws BadInput when it is no photo that we take, or the case is closed or has
	 * {@value #MOST}
	 */
	public CasePhoto add(CaseId id, byte[] file, String words) {
		String clean = Given.line("words", words.strip());
		if (clean.length() > LONGEST_WORDS) {
			throw new BadInput("the words have %d characters".formatted(clean.length()), "words",
					"use at most %d".formatted(LONGEST_WORDS));
		}
		// Decoded outside of the transaction: it takes a second, and no connection.
		Photo drawn = PhotoReader.read(file);
		CasePhoto photo = new CasePhoto(UUID.randomUUID(), drawn.width(), drawn.height(), clean, this.all.now());
		this.transaction.executeWithoutResult((status) -> {
			if (this.cases.lock(id).orElseThrow(() -> Cases.noCase(id)).closed()) {
				throw new BadInput("the case is closed", "photo", "open it again first");
			}
			if (this.photos.of(id).size() >= MOST) {
				throw new BadInput("the case has %d photos".formatted(MOST), "photo", "delete one first");
			}
			this.photos.add(id, photo, drawn.jpeg());
		});
		return photo;
	}

	public List<CasePhoto> of(CaseId id) {
		return this.photos.of(id);
	}

	/**
	 * The picture.
	 * @param id the case
	 * @param photo which of its photos
	 * @return a JPEG; empty when the case has no such photo
	 */
	public Optional<byte[]> picture(CaseId id, UUID photo) {
		return this.photos.content(id, photo);
	}

	/**
	 * Deletes a photo.
	 * @param id the case
	 * @param photo which of its photos
	 * @throws NotThere when it has none such
	 */
	public void remove(CaseId id, UUID photo) {
		if (!this.photos.remove(id, photo)) {
			throw new NotThere("There is no photo " + photo);
		}
	}

}
