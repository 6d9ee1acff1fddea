using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A number without a unit, or an amount of money.</summary>
internal sealed class PlanNumber<T>(T min, T max) : PlanValue<T>
    where T : struct, INumber<T>
{
    internal override string InWords => Say($"number from {min} to {max}");

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "number");
        schema.WriteNumber("minimum", double.CreateChecked(min));
        schema.WriteNumber("maximum", double.CreateChecked(max));
    }

    internal override bool TryRead(PlanNode node, PlanPart at, [MaybeNullWhen(false)] out T value)
    {
        if (
            T.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out value)
            && node.Kind == PlanNodeKind.Number
            && value >= min
            && value <= max
        )
        {
            // Adding 0 makes a written "-0" a plain 0.
            value += T.Zero;
            return true;
        }

        string whole = typeof(T) == typeof(int) ? "whole " : "";
        string plain = node.Kind == PlanNodeKind.Text ? " without quotes, sign or unit" : "";
        at.Report(node, Say($"expected a {whole}number from {min} to {max}{plain}, found {node.Describe()}"));
        return false;
    }

    internal override PlanNode Write(T value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.Number, path, value.ToString(null, CultureInfo.InvariantCulture));

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
