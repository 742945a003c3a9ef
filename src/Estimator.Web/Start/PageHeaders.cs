namespace Estimator.Web.Start;

/// <summary>What every answer carries: only files of this server run, nobody may frame it, nothing is guessed.</summary>
internal static class PageHeaders
{
    // The component library sets its colours in a style element and attributes, so styles may stand in the page; scripts may not.
    private const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self' ws: wss:; frame-ancestors 'none'; base-uri 'self'; form-action 'self'";

    internal static Task AddAsync(HttpContext context, RequestDelegate next)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        return next(context);
    }
}
