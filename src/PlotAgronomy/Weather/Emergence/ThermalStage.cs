namespace PlotAgronomy.Weather;

/// <summary>What a thermal time counts to.</summary>
internal enum ThermalStage
{
    /// <summary>Half the seeds germinated, on moist paper.</summary>
    Germination,

    /// <summary>Half the plants up, in the field.</summary>
    Emergence,
}
