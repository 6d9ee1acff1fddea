namespace PlotAgronomy.Planning;

/// <summary>What is to be done with the plot now.</summary>
public enum PlotDecision
{
    /// <summary>Sow every kind.</summary>
    Sow,

    /// <summary>Sow, without some of the kinds.</summary>
    SowWithout,

    /// <summary>Sow nothing yet: lime, wait and test.</summary>
    LimeAndWait,

    /// <summary>Sow nothing of this blend this season.</summary>
    NothingThisSeason,

    /// <summary>Sow nothing: keep up what stands.</summary>
    Upkeep,
}
