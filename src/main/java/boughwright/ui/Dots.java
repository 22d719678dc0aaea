package boughwright.ui;

import boughwright.catalogue.Product;
import boughwright.colour.Srgb;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;

/** A product's colours as round dots; their names stand beside them in words. */
final class Dots {

    private Dots() {
    }

    static Div of(Product product) {
        Div dots = new Div(dot(product.colour()));
        product.secondColour().ifPresent(second -> dots.add(dot(second)));
        dots.addClassName("dots");
        return dots;
    }

    static Span dot(Srgb colour) {
        Span dot = new Span();
        dot.addClassName("dot");
        dot.getStyle().set("background", colour.hex());
        dot.getElement().setAttribute("aria-hidden", "true");
        return dot;
    }
}
