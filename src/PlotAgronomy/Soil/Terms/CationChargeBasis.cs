namespace PlotAgronomy.Soil;

/// <summary>What a charge is counted on: soil by weight or soil by volume.</summary>
public enum CationChargeBasis
{
    /// <summary>Per 100 g of soil (the same number as cmol of charge per kg).</summary>
    Per100Grams,

    /// <summary>Per 100 cubic centimeters of soil as scooped (North Carolina).</summary>
    Per100CubicCentimeters,
}
