using System.Globalization;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A day.</summary>
internal sealed class PlanDate : PlanValue<DateOnly>
{
    private const string Form = "yyyy-MM-dd";

    /// <summary>Years a typed date may have: others are slips, and months counted from them leave the calendar.</summary>
    private static readonly int FirstYear = (int)PlanLimits.All["first-year"];
    private static readonly int LastYear = (int)PlanLimits.All["last-year"];

    internal override string InWords => "date, such as `2026-09-12`";

    internal override void Describe(Utf8JsonWriter schema)
    {
        schema.WriteString("type", "string");
        schema.WriteString("format", "date");
    }

    internal override bool TryRead(PlanNode node, PlanPart at, out DateOnly value)
    {
        var invariant = CultureInfo.InvariantCulture;
        if (DateOnly.TryParseExact(node.Text, Form, invariant, DateTimeStyles.None, out value) && node.Kind == PlanNodeKind.Text)
        {
            if (value.Year >= FirstYear && value.Year <= LastYear)
            {
                return true;
            }

            at.Report(node, $"expected a year from {Text(FirstYear)} to {Text(LastYear)}, found '{node.Text}'");
            return false;
        }

        at.Report(node, $"expected a date such as '2026-09-12' (ISO 8601), found {node.Describe()}");
        return false;
    }

    private static string Text(int year) => year.ToString(CultureInfo.InvariantCulture);

    internal override PlanNode Write(DateOnly value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.Text, path, value.ToString(Form, CultureInfo.InvariantCulture));
}
