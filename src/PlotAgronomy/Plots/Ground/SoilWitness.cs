namespace PlotAgronomy.Plots;

/// <summary>Who says a fact of the soil.</summary>
internal enum SoilWitness
{
    /// <summary>The laboratory: it stands on the report.</summary>
    Laboratory,

    /// <summary>Whoever stood on the plot, or looked at its soil map.</summary>
    OwnEyes,
}
