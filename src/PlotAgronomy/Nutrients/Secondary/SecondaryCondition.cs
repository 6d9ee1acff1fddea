namespace PlotAgronomy.Nutrients;

/// <summary>What a rule for a secondary nutrient asks beyond test, pH, organic matter and texture.</summary>
internal enum SecondaryCondition
{
    /// <summary>No lime is to be spread: dolomitic lime would bring the magnesium.</summary>
    NoLimeDue,

    /// <summary>A tissue test shows too little sulfur.</summary>
    TissueSulfurLow,
}
