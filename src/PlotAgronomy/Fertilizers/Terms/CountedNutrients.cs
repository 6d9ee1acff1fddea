namespace PlotAgronomy.Fertilizers;

/// <summary>What a limit for fertilizer near seed counts.</summary>
public enum CountedNutrients
{
    /// <summary>Pounds of N plus K2O.</summary>
    NitrogenPotash,

    /// <summary>Pounds of N plus K2O plus S.</summary>
    NitrogenPotashSulfur,

    /// <summary>Any fertilizer at all.</summary>
    Everything,
}
