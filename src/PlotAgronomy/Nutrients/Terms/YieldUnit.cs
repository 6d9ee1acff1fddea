namespace PlotAgronomy.Nutrients;

/// <summary>Unit in which a yield per acre is counted.</summary>
public enum YieldUnit
{
    /// <summary>Bushel of grain.</summary>
    Bushel,

    /// <summary>US ton (2000 lb) of hay or forage.</summary>
    Ton,
}
