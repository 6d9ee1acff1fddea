namespace PlotAgronomy.OfflinePage.Plan;

/// <summary>The plans to begin with.</summary>
internal static class FirstPlan
{
    /// <summary>Gets a plan that holds nothing but a name.</summary>
    internal const string Blank = """
        {
          "planVersion": 1,
          "plot": {
            "name": "My plot",
            "use": "browsed"
          }
        }

        """;

    /// <summary>Reads the demo plan; its places, amounts and prices are invented.</summary>
    internal static string Demo()
    {
        using var stream = typeof(FirstPlan).Assembly.GetManifestResourceStream("demo.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
