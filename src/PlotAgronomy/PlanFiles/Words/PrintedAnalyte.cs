using PlotAgronomy.Soil;

namespace PlotAgronomy.PlanFiles;

/// <summary>What a report's row names: the analyte, and whether the figure is the element or the oxide.</summary>
internal sealed record PrintedAnalyte(SoilAnalyte Analyte, PrintedForm Form);
