package org.lapwright.app.files.drawing;

import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How the outermost {@code svg} lays its content out: SVG 1.1, §7.7 and §7.8, with y turned upwards.
 *
 * @param placed from the content's coordinates to CSS pixels
 * @param scale what a pixel is
 */
record SvgFrame(AffineTransform placed, DrawnScale scale) {
    static SvgFrame of(Attributes svg) {
        OptionalDouble width = size(svg, "width");
        OptionalDouble height = size(svg, "height");
        List<Double> box = SvgNumbers.list(svg.text("viewBox"));
        boolean boxed = box.size() == 4 && box.get(2) > 0 && box.get(3) > 0;
        AffineTransform placed = AffineTransform.getScaleInstance(1, -1);
        if (boxed && (width.isPresent() || height.isPresent())) {
            placed.concatenate(fitted(svg.text("preserveAspectRatio"), box, width, height));
        }
        boolean physical = width.isPresent() && SvgNumbers.isPhysical(svg.text("width"))
                || height.isPresent() && SvgNumbers.isPhysical(svg.text("height"));
        return new SvgFrame(placed, scale(svg, physical, width.isPresent() || height.isPresent()));
    }

    private static OptionalDouble size(Attributes svg, String name) {
        OptionalDouble length = svg.has(name) ? SvgNumbers.length(svg.text(name)) : OptionalDouble.empty();
        return length.isPresent() && length.getAsDouble() > 0 ? length : OptionalDouble.empty();
    }

    /** Where it lies on the page does not matter here, only its size: "slice" fills, "meet", the usual one, fits in. */
    private static AffineTransform fitted(
            String aspect, List<Double> box, OptionalDouble width, OptionalDouble height) {
        double alone = width.isPresent() ? width.getAsDouble() / box.get(2) : height.orElseThrow() / box.get(3);
        double across = width.isPresent() ? alone : height.orElseThrow() / box.get(3);
        double up = height.isPresent() ? height.getAsDouble() / box.get(3) : alone;
        String wish = aspect.strip().toLowerCase(Locale.ROOT);
        if (!wish.startsWith("none")) {
            double both = wish.endsWith("slice") ? Math.max(across, up) : Math.min(across, up);
            across = both;
            up = both;
        }
        AffineTransform fitted = AffineTransform.getScaleInstance(across, up);
        fitted.translate(-box.get(0), -box.get(1));
        return fitted;
    }

    private static DrawnScale scale(Attributes svg, boolean physical, boolean sized) {
        if (physical) {
            return new DrawnScale(
                    SvgNumbers.MM_PER_PX,
                    true,
                    "The drawing says how large it is: %s wide, %s high."
                            .formatted(said(svg.text("width")), said(svg.text("height"))));
        }
        return new DrawnScale(
                SvgNumbers.MM_PER_PX,
                false,
                (sized ? "The drawing is measured in pixels" : "The drawing does not say how large it is")
                        + "; one is taken for 1/96 inch (CSS). Say what it is, or give a length you know.");
    }

    private static String said(String length) {
        return length.isBlank() ? "not said how" : LeftOut.shortened(length.strip());
    }
}
