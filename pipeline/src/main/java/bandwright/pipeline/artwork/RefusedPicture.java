package bandwright.pipeline.artwork;

import java.io.IOException;

/** Why reading a picture ended. */
public final class RefusedPicture extends IOException {
    private static final long serialVersionUID = 1L;

    private final Flaw flaw;

    public RefusedPicture(Flaw flaw) {
        super(flaw.name());
        this.flaw = flaw;
    }

    public Flaw flaw() {
        return flaw;
    }
}
