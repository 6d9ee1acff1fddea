using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>One step of a conversion.</summary>
/// <param name="Formula">How it is done.</param>
/// <param name="Place">Place of the formula that the number before the step fills.</param>
/// <param name="From">Number before the step.</param>
/// <param name="To">Number after it.</param>
/// <param name="Values">The formula's other places.</param>
/// <param name="Factor">Where its factor stands, when the formula itself has no source.</param>
internal readonly record struct ConversionStep(
    Formula Formula,
    string Place,
    double From,
    double To,
    ImmutableArray<FormulaPlace> Values,
    Origin? Factor
)
{
    internal Origin? Origin => Formula.Origin ?? Factor;

    internal WorkedLine Line() =>
        Formula.Line(Amounts.Print(To, 4), [(Place, Amounts.Print(From, 4)), .. Values.Select(v => v.Printed)]).From(Origin);
}
