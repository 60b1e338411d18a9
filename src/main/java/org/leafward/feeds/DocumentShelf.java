package org.leafward.feeds;

import java.nio.ByteBuffer;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Documents that were asked for lately, up to a number of octets. A document is taken
 * from here only under the tag that its address has now, so it never is an old one.
 */
final class DocumentShelf {

	private final Map<Place, FeedDocument> documents = new LinkedHashMap<>(64, 0.75F, true);

	private final long most;

	private long octets;

	/** An address in a form; buffers are equal by what they hold. */
	private record Place(ByteBuffer key, FeedForm form) {
	}

	DocumentShelf(long most) {
		this.most = most;
	}

	synchronized @Nullable FeedDocument find(FeedState state) {
		FeedDocument found = this.documents.get(place(state));
		return (found != null && found.etag().equals(state.etag())) ? found : null;
	}

	synchronized void put(FeedState state, FeedDocument document) {
		FeedDocument before = this.documents.put(place(state), document);
		this.octets += document.weight() - ((before != null) ? before.weight() : 0);
		Iterator<FeedDocument> oldest = this.documents.values().iterator();
		while (this.octets > this.most && oldest.hasNext()) {
			this.octets -= oldest.next().weight();
			oldest.remove();
		}
	}

	private static Place place(FeedState state) {
		return new Place(ByteBuffer.wrap(state.key()), state.form());
	}

}
