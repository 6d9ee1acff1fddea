using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The formula that a row of the methods names.</summary>
internal static class LimeFormulaReader
{
    internal static LimeFormula Read(CsvRow method) =>
        method.Text("form") switch
        {
            "table" => new LimeTableFormula(method),
            "linear" => new LimeLinearFormula(method),
            "north-carolina" => new NorthCarolinaFormula(method),
            "pennsylvania-field" => new PennsylvaniaFormula(method),
            "adams-evans" => new AdamsEvansFormula(method),
            "woodruff" => new WoodruffFormula(method),
            "georgia" => new GeorgiaFormula(method),
            "vermont" => new VermontFormula(method),
            "texture" => new TextureFormula(method),
            var form => throw method.Problem("form", $"unknown form '{form}'"),
        };
}
