/** What the client asks of the host beside the workbook: custom functions and the pane's visibility. */
import { NOTHING, type SomeTypes } from "../host/objects";
import type { FunctionResult, TypeName } from "./targets";

/** Names under which the client makes these objects. */
export const SERVICES: Readonly<Record<string, TypeName>> = {
  "Microsoft.ExcelServices.CustomFunctions": "CustomFunctions",
  "Microsoft.AppRuntime.AppRuntimeService": "AppRuntimeService",
};

export const SERVICE_TYPES = {
  CustomFunctions: {
    methods: {
      _SetOsfControlContainerReadyForCustomFunctions: () => NOTHING,
      // None of the runtime's trial features: results go at most every half second.
      _GetEnabledFeatures: () => ({ value: [] }),
      SetInvocationArrayResults(_, [results], host) {
        for (const result of results as readonly FunctionResult[]) host.functions.finish(result);
        return NOTHING;
      },
    },
  },
  AppRuntimeService: {
    methods: {
      GetAppRuntimeState: (_, __, host) => ({ value: host.paneVisible ? "Visible" : "Background" }),
      SetAppRuntimeState(_, [state], host) {
        host.paneVisible = state === "Visible";
        host.events.visibility(host.paneVisible);
        return NOTHING;
      },
    },
  },
} satisfies SomeTypes;
