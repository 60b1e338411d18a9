package org.leafward.pages.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.leafward.measure.BadInput;

/**
 * Reads a photo that somebody sends and draws it anew, so that neither the place where it
 * was taken nor anything else that a file can carry comes along. JPEG and PNG only, known
 * by their first bytes; size and pixels are bounded before anything is decoded.
 */
public final class PhotoReader {

	/** Octets that are taken: 8 MiB. */
	public static final int MOST_OCTETS = 8 << 20;

	/** Pixels that are taken. */
	public static final long MOST_PIXELS = 50_000_000;

	/** The longer side of what is kept, px. */
	public static final int SIDE = 1600;

	private static final int LEAST_SIDE = 16;

	private static final float QUALITY = 0.82f;

	private static final String FIELD = "photo";

	/** A large picture takes some 100 MB while it is decoded. */
	private static final Semaphore AT_A_TIME = new Semaphore(2);

	private static final int LONGEST_WAIT_SECONDS = 20;

	static {
		ImageIO.setUseCache(false);
	}

	private PhotoReader() {
	}

	/**
	 * Reads a photo.
	 * @param file what was sent
	 * @return upright, at most {@value #SIDE} px on its longer side
	 * @throws BadInput when it is no photo that we take, too large, or broken
	 */
	public static Photo read(byte[] file) {
		if (file.length > MOST_OCTETS) {
			throw new BadInput("the photo has %,d bytes".formatted(file.length), FIELD,
					"choose one of at most %d MB; a phone can send it smaller".formatted(MOST_OCTETS >> 20));
		}
		boolean jpeg = begins(file, 0xff, 0xd8, 0xff);
		if (!jpeg && !begins(file, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n')) {
			throw new BadInput("the file is neither a JPEG nor a PNG", FIELD,
					"save the photo as JPEG; phones do that under “most compatible”");
		}
		try {
			if (!AT_A_TIME.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
				throw new BadInput("many photos come in right now", FIELD, "try again in a minute");
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new BadInput("the server stops", FIELD, "try again in a minute");
		}
		try {
			return draw(decode(file, jpeg), jpeg ? Upright.of(file) : 1);
		}
		catch (IOException | RuntimeException ex) {
			if (ex instanceof BadInput bad) {
				throw bad;
			}
			// Decoders throw whatever they stumble over; none of it helps a reader.
			throw new BadInput("the photo can’t be opened", FIELD, "open it on your own device and save it as JPEG");
		}
		finally {
			AT_A_TIME.release();
		}
	}

	private static boolean begins(byte[] file, int... start) {
		for (int i = 0; i < start.length; i++) {
			if (file.length <= i || (file[i] & 0xff) != start[i]) {
				return false;
			}
		}
		return true;
	}

	private static BufferedImage decode(byte[] file, boolean jpeg) throws IOException {
		Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(jpeg ? "jpeg" : "png");
		ImageReader reader = readers.next();
		try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
			reader.setInput(in, true, true);
			int width = reader.getWidth(0);
			int height = reader.getHeight(0);
			if ((long) width * height > MOST_PIXELS) {
				throw new BadInput("the photo has %,d by %,d pixels".formatted(width, height), FIELD,
						"choose one of at most %d million pixels".formatted(MOST_PIXELS / 1_000_000));
			}
			if (width < LEAST_SIDE || height < LEAST_SIDE) {
				throw new BadInput("the photo has only %d by %d pixels".formatted(width, height), FIELD,
						"choose one on which something can be seen");
			}
			ImageReadParam param = reader.getDefaultReadParam();
			// Twice the pixels that are kept, so that scaling stays smooth.
			int every = Math.max(1, Math.max(width, height) / (2 * SIDE));
			param.setSourceSubsampling(every, every, 0, 0);
			return reader.read(0, param);
		}
		finally {
			reader.dispose();
		}
	}

	private static Photo draw(BufferedImage read, int orientation) throws IOException {
		double scale = Math.min(1, (double) SIDE / Math.max(read.getWidth(), read.getHeight()));
		int width = (int) Math.max(1, Math.round(read.getWidth() * scale));
		int height = (int) Math.max(1, Math.round(read.getHeight() * scale));
		boolean turned = orientation >= 5;
		BufferedImage drawn = new BufferedImage(turned ? height : width, turned ? width : height,
				BufferedImage.TYPE_INT_RGB);
		Graphics2D pen = drawn.createGraphics();
		pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
		pen.setColor(Color.WHITE);
		pen.fillRect(0, 0, drawn.getWidth(), drawn.getHeight());
		AffineTransform way = turn(orientation, width, height);
		way.scale((double) width / read.getWidth(), (double) height / read.getHeight());
		pen.drawImage(read, way, null);
		pen.dispose();
		return new Photo(jpeg(drawn), drawn.getWidth(), drawn.getHeight());
	}

	/** What each orientation means: Exif 2.32, 4.6.4, tag 0x0112. */
	static AffineTransform turn(int orientation, int width, int height) {
		return switch (orientation) {
			case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
			case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
			case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
			case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
			case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
			case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
			case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
			default -> new AffineTransform();
		};
	}

	private static byte[] jpeg(BufferedImage image) throws IOException {
		ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
			ImageWriteParam param = writer.getDefaultWriteParam();
			param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
			param.setCompressionQuality(QUALITY);
			writer.setOutput(stream);
			writer.write(null, new IIOImage(image, null, null), param);
		}
		finally {
			writer.dispose();
		}
		return out.toByteArray();
	}

}
