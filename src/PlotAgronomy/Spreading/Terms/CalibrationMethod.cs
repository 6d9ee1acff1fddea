namespace PlotAgronomy.Spreading;

/// <summary>How a rate was measured.</summary>
internal enum CalibrationMethod
{
    /// <summary>Weigh the hopper before and after a taped course.</summary>
    WeighedRun,

    /// <summary>Load a weighed amount and walk until the hopper is empty.</summary>
    RunOut,

    /// <summary>Catch what leaves in a timed spell, at working rhythm; speed measured apart.</summary>
    TimedCatch,

    /// <summary>Weigh what fell on trays or a tarp of known area.</summary>
    TrayCatch,

    /// <summary>Turn the ground wheel of a drill or drop seeder and weigh what came out.</summary>
    WheelTurns,

    /// <summary>What was spread on a whole plot, weighed afterwards.</summary>
    WholePlot,
}
