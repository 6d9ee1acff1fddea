namespace PlotAgronomy.Calendar;

/// <summary>How the ground is made ready and the seed brought to it.</summary>
public enum GroundWork
{
    /// <summary>Tilled, firmed, sown, pressed.</summary>
    Tilled,

    /// <summary>Sown into a standing crop that is rolled down over the seed.</summary>
    RolledDown,

    /// <summary>Sown into standing growth that is mown over the seed.</summary>
    MownDown,

    /// <summary>Sown on frozen ground.</summary>
    FrostSeeded,

    /// <summary>Placed by a drill.</summary>
    Drilled,
}
