namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>The demo plan of a fall blend.</summary>
internal static class Demo
{
    internal static string Text { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "fall-blend.json"));

    internal static PlotPlan Plan => PlanFile.Read(Text).Plan ?? throw new InvalidOperationException("The demo plan must be readable.");
}
