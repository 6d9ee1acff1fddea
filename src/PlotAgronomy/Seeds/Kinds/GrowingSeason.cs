namespace PlotAgronomy.Seeds;

/// <summary>The half of the year in which a kind grows best.</summary>
public enum GrowingSeason
{
    /// <summary>Grows in spring and fall.</summary>
    Cool,

    /// <summary>Grows in the heat of summer.</summary>
    Warm,
}
