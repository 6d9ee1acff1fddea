using System.Text.Json;
using System.Text.RegularExpressions;

namespace PlotAgronomy.PlanFiles;

/// <summary>A printed rate, or a printed range of rates: <c>40 to 60 lb/ac</c>.</summary>
/// <param name="example">Example for schema, page and messages.</param>
/// <param name="range">Example of a range.</param>
internal sealed partial class PlanRateRange(string example, string range = "40 to 60 lb/ac") : PlanValue<RateRange>
{
    private readonly PlanValue<ApplicationRate> rate = Value.Rate(example);

    internal override string InWords => $"{rate.InWords}, or a printed range, such as `{range}`";

    internal override void Describe(Utf8JsonWriter schema) => rate.Describe(schema);

    internal override bool TryRead(PlanNode node, PlanPart at, out RateRange value)
    {
        value = default;
        if (node.Kind != PlanNodeKind.Text || TwoEnds().Match(node.Text) is not { Success: true } ends)
        {
            bool read = rate.TryRead(node, at, out var one);
            value = new(one, null);
            return read;
        }

        string unit = ends.Groups["counted"].Value;
        if (
            !rate.TryRead(End(node, ends.Groups["low"].Value, unit), at, out var low)
            || !rate.TryRead(End(node, ends.Groups["high"].Value, unit), at, out var high)
        )
        {
            return false;
        }

        if (high <= low)
        {
            at.Report(node, $"a range runs from its lower end to its upper, found '{node.Text}'");
            return false;
        }

        value = new(low, high);
        return true;
    }

    internal override PlanNode? Write(RateRange value, string path, List<PlanProblem> refusals)
    {
        if (value.High is not { } high)
        {
            return rate.Write(value.Low, path, refusals);
        }

        // Both ends have one unit: that of the example, where both read back in it, else pounds to the acre.
        string unit = example[(example.IndexOf(' ', StringComparison.Ordinal) + 1)..];
        if (InUnit(value.Low, unit) is { } lowest && InUnit(high, unit) is { } highest)
        {
            return new PlanNode(PlanNodeKind.Text, path, $"{lowest} to {highest} {unit}");
        }

        return new PlanNode(
            PlanNodeKind.Text,
            path,
            $"{ExactText.Of(value.Low.PoundsPerAcre)} to {ExactText.Of(high.PoundsPerAcre)} lb/ac"
        );
    }

    /// <summary>The number of a rate in a unit; null where it does not read back to the last digit.</summary>
    private static string? InUnit(ApplicationRate rate, string unit)
    {
        string printed = Amounts.Print(rate, unit);
        return Amounts.TryReadRate(printed, out var again, out _) && again == rate ? printed[..^(unit.Length + 1)] : null;
    }

    private static PlanNode End(PlanNode node, string number, string unit) =>
        new(PlanNodeKind.Text, node.Path, $"{number} {unit}") { Line = node.Line, Column = node.Column };

    [GeneratedRegex(
        @"^\s*(?<low>[0-9][0-9.,]*)\s*(?:to|-|\u2013)\s*(?<high>[0-9][0-9.,]*)\s*(?<counted>\D.*)?$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex TwoEnds();
}

/// <summary>A rate, or a range of two.</summary>
/// <param name="Low">The rate, or the lower end.</param>
/// <param name="High">The upper end; null for one rate.</param>
internal readonly record struct RateRange(ApplicationRate Low, ApplicationRate? High)
{
    internal static RateRange? Of(ApplicationRate? low, ApplicationRate? high) => low is { } rate ? new(rate, high) : null;
}
