namespace PlotAgronomy.Liming;

/// <summary>Where the lime goes.</summary>
public enum LimePlacement
{
    /// <summary>Worked into the soil.</summary>
    WorkedIn,

    /// <summary>Left on the surface: no-till, established sod, growing plants.</summary>
    Surface,
}
