using System.Diagnostics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The formula that a row of the methods names.</summary>
internal static class LimeFormulaReader
{
    internal static LimeFormula Read(CsvRow method) =>
        method.Choice<LimeFormulaForm>("form") switch
        {
            LimeFormulaForm.Table => new LimeTableFormula(method),
            LimeFormulaForm.Linear => new LimeLinearFormula(method),
            LimeFormulaForm.AcidityFromBuffer => new NorthCarolinaFormula(method),
            LimeFormulaForm.ExchangeableAcidity => new PennsylvaniaFormula(method),
            LimeFormulaForm.AcidShare => new AdamsEvansFormula(method),
            LimeFormulaForm.NeutralizableAcidity => new WoodruffFormula(method),
            LimeFormulaForm.BufferCapacity => new GeorgiaFormula(method),
            LimeFormulaForm.ReactiveAluminum => new VermontFormula(method),
            LimeFormulaForm.Turf => new TurfFormula(method),
            LimeFormulaForm.Texture => new TextureFormula(method),
            _ => throw new UnreachableException(),
        };
}
