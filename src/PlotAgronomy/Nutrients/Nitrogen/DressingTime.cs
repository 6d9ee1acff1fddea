namespace PlotAgronomy.Nutrients;

/// <summary>The season of a dressing, seen from the day of sowing.</summary>
public enum DressingTime
{
    /// <summary>Before or with the seed.</summary>
    AtSowing,

    /// <summary>Once the stand is up and growing.</summary>
    AfterEmergence,

    /// <summary>Weeks or a season later.</summary>
    Later,
}
