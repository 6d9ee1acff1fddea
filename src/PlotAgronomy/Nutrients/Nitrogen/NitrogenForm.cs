namespace PlotAgronomy.Nutrients;

/// <summary>How a nitrogen rule is stated.</summary>
internal enum NitrogenForm
{
    /// <summary>One figure or range per acre.</summary>
    Fixed,

    /// <summary>So much for each unit of yield.</summary>
    PerUnit,

    /// <summary>A printed table of yields, read in between by straight lines.</summary>
    YieldTable,
}
