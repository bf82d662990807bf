package bandwright.pipeline.artwork;

import java.io.IOException;

/** Why reading a picture ended. */
final class RefusedPicture extends IOException {
    private static final long serialVersionUID = 1L;

    private final Flaw flaw;

    RefusedPicture(Flaw flaw) {
        super(flaw.name());
        this.flaw = flaw;
    }

    Flaw flaw() {
        return flaw;
    }
}
