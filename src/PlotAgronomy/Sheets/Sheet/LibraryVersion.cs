namespace PlotAgronomy.Sheets;

/// <summary>The version of this library as a sheet names it.</summary>
internal static class LibraryVersion
{
    /// <summary>Major, minor and patch, such as <c>0.1.0</c>: what follows them in a package changes with each build.</summary>
    internal static string Text { get; } = typeof(LibraryVersion).Assembly.GetName().Version!.ToString(3);
}
