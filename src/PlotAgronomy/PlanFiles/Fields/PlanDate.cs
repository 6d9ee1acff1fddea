using System.Globalization;
using System.Text.Json;

namespace PlotAgronomy.PlanFiles;

/// <summary>A day.</summary>
internal sealed class PlanDate : PlanValue<DateOnly>
{
    private const string Form = "yyyy-MM-dd";

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
            return true;
        }

        at.Report(node, $"expected a date such as '2026-09-12' (ISO 8601), found {node.Describe()}");
        return false;
    }

    internal override PlanNode Write(DateOnly value, string path, List<PlanProblem> refusals) =>
        new(PlanNodeKind.Text, path, value.ToString(Form, CultureInfo.InvariantCulture));
}
